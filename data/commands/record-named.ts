import type { SpeciesRecord } from "vivary/species";
import type { Collection } from "../reading/collection";
import { filesNamed, nearestTo } from "../reading/find-files";
import { type Answer, refused } from "./answer";

/** The record that a command is about, by any of its names; or why there is none. */
export function recordNamed(collection: Collection, asked: string): SpeciesRecord | Answer {
  const files = filesNamed(collection, asked).filter(({ folder }) => folder === "species");
  const paths = files.map(({ path }) => path);
  const found = collection.records.find(({ path }) => paths.includes(path));
  if (found) return found.record;
  const [broken] = files;
  if (broken) return refused(`${broken.path} is not well formed: npm run species check ${broken.name}`);
  const meant = nearestTo(collection, asked);
  return refused(`No record is called ${asked}.${meant === undefined ? "" : ` Did you mean ${meant}?`}`);
}

export const isAnswer = (given: object): given is Answer => "lines" in given && "failed" in given;
