// Starts a second record from one: what was one species is two.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas } from "vivary/schema";
import { type RecordSources, statementsOf, traitPaths } from "vivary/species";
import { question } from "../checks/nothing-is-left-to-fill-in";
import { readCollection } from "../collection";
import { fieldOf } from "../fields";
import { formatRecord } from "../format-record";
import { type Answer, refused } from "./answer";
import { isAnswer, recordNamed } from "./record-named";
import { idOf, refusedName } from "./rename";

export async function split(root: string, asked: string, name: string): Promise<Answer> {
  const collection = await readCollection(root);
  const record = recordNamed(collection, asked);
  if (isAnswer(record)) return record;
  const taken = refusedName(collection, record, name);
  if (taken) return refused(taken);

  const id = idOf(name);
  const old = record.taxonomy.name;
  const { synonyms, ...taxonomy } = record.taxonomy;
  const file = collection.files.species.find((one) => one.name === record.id);
  const { identifiers, forms, reproduction, ...kept } = record;
  const { interbreedsWith, ...breeding } = reproduction ?? {};
  const stated = { ...kept, ...(Object.keys(breeding).length > 0 && { reproduction: breeding }) };
  const named = new Set(traitPaths.flatMap((trait) => statementsOf(stated, trait).map(({ by }) => by)));
  const written = Object.entries((fieldOf(file?.json, "sources") ?? {}) as RecordSources);
  const second = {
    $schema: "../schemas/species.schema.json",
    ...stated,
    id,
    taxonomy: { ...taxonomy, name, authority: "", note: `${question} who parted it from ${old}, and when.` },
    names: { en: [""] },
    sources: standingIn(
      written.filter(([key]) => named.has(key)),
      old,
    ),
  };
  await writeFile(join(root, `data/species/${id}.json`), formatRecord(second, jsonSchemas.species));
  const laws = collection.files.legal
    .map(({ path, text }) => ({ path, text, next: text.replaceAll(`"${old}"`, `"${old}", "${name}"`) }))
    .filter(({ text, next }) => text !== next);
  await Promise.all(laws.map(({ path, next }) => writeFile(join(root, path), next)));
  return {
    lines: [
      `data/species/${id}.json starts with what is said of ${old}, whose figures stand in for it.`,
      ...laws.map(({ path }) => `${path} named both as ${old}, and now names ${name} too.`),
      `Take "of" from the sources that are of ${name}; take what is of ${name} alone from data/species/${record.id}.json.`,
      "State in reproduction.interbreedsWith of both whether they cross.",
      `Then: npm run format && npm run species check ${id}`,
    ],
    failed: false,
  };
}

/** The sources as those of the other species; what they call it is no synonym of this one. */
const standingIn = (sources: readonly (readonly [key: string, RecordSources[string]])[], of: string) =>
  Object.fromEntries(sources.map(([key, { under, ...source }]) => [key, { ...source, of: source.of ?? of }]));
