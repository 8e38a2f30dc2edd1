// Prints the page of a species as readers get it.
import { citationsOf } from "vivary/evidence";
import { speciesPage } from "vivary/report";
import type { Source } from "vivary/schema";
import { citable, lawsOf } from "../modules/compiling";
import { profileOf } from "../modules/modules";
import { readCollection } from "../reading/collection";
import type { Answer } from "./answer";
import { isAnswer, recordNamed } from "./record-named";

export async function page(root: string, asked: string): Promise<Answer> {
  const collection = await readCollection(root);
  const record = recordNamed(collection, asked);
  if (isAnswer(record)) return record;
  const held = new Map(collection.files.sources.map(({ name, json }) => [name, citable(json as Source)]));
  const text = speciesPage(profileOf(record, lawsOf(collection)), {
    record,
    candidates: collection.records.map(({ profile }) => profile),
    sources: citationsOf(record).map((citation) => ({ ...citation, source: held.get(citation.cite) })),
    format: "markdown",
  });
  return { lines: [text.trimEnd()], failed: false };
}
