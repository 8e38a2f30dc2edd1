// Prints the finished page of a species.
import { profileMarkdown } from "vivary/report";
import type { Source } from "vivary/schema";
import { type RecordSources, resolve } from "vivary/species";
import { readCollection } from "../collection";
import type { Answer } from "./answer";
import { isAnswer, recordNamed } from "./record-named";

export async function page(root: string, asked: string): Promise<Answer> {
  const collection = await readCollection(root);
  const record = recordNamed(collection, asked);
  if (isAnswer(record)) return record;
  const held = new Map(collection.files.sources.map(({ name, json }) => [name, json as Source]));
  const profile = profileMarkdown(resolve(record)).trimEnd();
  const sources = Object.entries(record.sources).map(([key, source]) => citation(key, source, held));
  return { lines: [profile, "", "## Sources", "", ...sources], failed: false };
}

/** A source in one line: who, when, what, and where in it. */
function citation(
  key: string,
  { cite, at, memory, of }: RecordSources[string],
  held: ReadonlyMap<string, Source>,
): string {
  const { author = [], issued, title = cite, DOI, URL } = held.get(cite) ?? {};
  const names = author.map((one) => ("literal" in one ? one.literal : one.family));
  const who = names.length > 3 ? `${names[0]} and others` : names.join(", ");
  const year = issued?.["date-parts"][0]?.[0];
  const where = DOI ? `https://doi.org/${DOI}` : URL;
  const parts = [
    [who, year && `(${year})`].filter(Boolean).join(" "),
    title,
    at,
    where,
    memory && "recalled, not checked",
    of && `of ${of}`,
  ];
  return `- ${key}: ${parts.filter(Boolean).join(". ")}`;
}
