// Starts a second record from one: what was one species is two.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas } from "vivary/schema";
import { type RecordSources, type Section, type Statement, statementsOf, traitPaths } from "vivary/species";
import { question } from "../checks/nothing-is-left-to-fill-in";
import { readCollection } from "../reading/collection";
import { fieldOf } from "../reading/fields";
import { formatRecord } from "../writing/format-record";
import { type Answer, refused } from "./answer";
import { isAnswer, recordNamed } from "./record-named";
import { idOf, refusedName } from "./rename";

/** What harms others where it is wrong: what no source says there is asked anew. */
const grave: readonly Section[] = ["temperament", "social", "predation"];

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
  const statements = traitPaths.flatMap((trait): readonly Statement[] => statementsOf(stated, trait));
  const named = new Set(statements.map(({ by }) => by));
  const isUnsourced = ({ by }: Statement) => !Object.hasOwn(record.sources, by);
  const doubted = (statement: Statement) =>
    isUnsourced(statement) ? { ...statement, note: doubt(name, old, statement.note) } : statement;
  const written = Object.entries((fieldOf(file?.json, "sources") ?? {}) as RecordSources);
  const second = {
    $schema: "../schemas/species.schema.json",
    ...stated,
    ...Object.fromEntries(grave.map((section) => [section, eachIn(stated[section] ?? {}, doubted)])),
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
      `${statements.filter(isUnsourced).length} lines that no source says are of ${old}: read each, and correct it or take it out. Those of ${grave.join(", ")} are questions.`,
      `Take "of" from the sources that are of ${name}; take what is of ${name} alone from data/species/${record.id}.json.`,
      "State in reproduction.interbreedsWith of both whether they cross.",
      `Then: npm run format && npm run species check ${id}`,
    ],
    failed: false,
  };
}

const doubt = (name: string, old: string, note = "") =>
  `${question} whether it is so of ${name} as of ${old}. ${note}`.trim();

/** The traits of a section with each statement made another. */
const eachIn = (
  section: Readonly<Record<string, readonly Statement[] | undefined>>,
  made: (statement: Statement) => Statement,
) => Object.fromEntries(Object.entries(section).map(([trait, statements]) => [trait, statements?.map(made)]));

/** The sources as those of the other species; what they call it is no synonym of this one. */
const standingIn = (sources: readonly (readonly [key: string, RecordSources[string]])[], of: string) =>
  Object.fromEntries(sources.map(([key, { under, ...source }]) => [key, { ...source, of: source.of ?? of }]));
