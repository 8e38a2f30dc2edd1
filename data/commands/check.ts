// Checks the data as one collection, beyond what each file must be by itself.
import { checks, type Slip } from "../checks";
import { allFiles, readCollection } from "../collection";
import { fieldOf, fieldsOf } from "../fields";
import type { DataFile } from "../files";
import { type Answer, refused } from "./answer";

/** Every problem of a file, named by its id, its path or its name, and of what it cites; or of all files. */
export async function check(root: string, name?: string): Promise<Answer> {
  const collection = await readCollection(root);
  const files = allFiles(collection);
  const asked = name === undefined ? files : files.filter((file) => isNamed(file, name));
  if (asked.length === 0) return refused(`data has no file of the name ${name}.`);
  const slips = await Promise.all(
    checks.map(async (check) =>
      (await check.find(collection)).map((slip) => ({ ...slip, check: check.name })),
    ),
  );
  const places = asked.flatMap((file) => [file.path, ...citedBy(file)]);
  const told = slips
    .flat()
    .filter(
      (slip) => name === undefined || places.some((place) => `${slip.where} ${slip.found}`.includes(place)),
    );
  const count = name === undefined ? `${files.length} files` : asked.map(({ path }) => path).join(", ");
  return { lines: [...told.map(sentence), `${count}: ${told.length} problems.`], failed: told.length > 0 };
}

/** `danio-rerio`, `Danio rerio`, `danio-rerio.json` and `data/species/danio-rerio.json` mean one file. */
function isNamed({ name, path }: DataFile, asked: string): boolean {
  const id = asked
    .replace(/\.json$/, "")
    .toLowerCase()
    .replaceAll(" ", "-");
  return name === id || path === `${id}.json`;
}

const citedBy = ({ json }: DataFile): readonly string[] =>
  fieldsOf(fieldOf(json, "sources")).map(([, source]) => `data/sources/${fieldOf(source, "cite")}.json`);

/** What, where, what was expected, and how to mend it. */
function sentence({ check, where, found, expected, mend }: Slip & { readonly check: string }): string {
  const parts = [found, expected && `expected ${expected}`].filter((part) => part !== undefined);
  return `${check}.\n  ${where}: ${parts.map((part) => part.replace(/\.$/, "")).join("; ")}.\n  ${mend}`;
}
