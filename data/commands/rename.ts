// Gives a record another accepted name, and takes along what names it.
import { rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas, problemsIn } from "vivary/schema";
import type { SpeciesRecord } from "vivary/species";
import { type Collection, readCollection } from "../reading/collection";
import { fieldOf } from "../reading/fields";
import { gitOrNothing } from "../reading/history";
import { formatRecord } from "../writing/format-record";
import { format } from "../writing/formatting";
import { type Answer, refused } from "./answer";
import { isAnswer, recordNamed } from "./record-named";

export async function rename(root: string, asked: string, name: string): Promise<Answer> {
  const collection = await readCollection(root);
  const record = recordNamed(collection, asked);
  if (isAnswer(record)) return record;
  const id = idOf(name);
  const taken = refusedName(collection, record, name);
  if (taken) return refused(taken);

  const { taxonomy } = record;
  const synonyms = [taxonomy.name, ...(taxonomy.synonyms ?? []).filter((synonym) => synonym !== name)];
  const $schema = "../schemas/species.schema.json";
  const renamed = { $schema, ...record, id, taxonomy: { ...taxonomy, name, synonyms } };
  await writeFile(join(root, `data/species/${id}.json`), textOf(collection, record, renamed));
  await rm(join(root, `data/species/${record.id}.json`));
  await forward(root, collection, record, { id, name });
  const followed = await follow(root, collection, record, { id, name });
  await format(root);
  const elsewhere = await namedElsewhere(root, record.id);
  return {
    lines: [
      `data/species/${id}.json is ${taxonomy.name} under its new name; data/moved/${record.id}.json forwards.`,
      ...followed.map((path) => `${path} follows.`),
      ...(elsewhere.length > 0
        ? [
            `${elsewhere.length} files name ${record.id} too, which still leads there: ${elsewhere.join(", ")}`,
          ]
        : []),
      `Laws that name ${taxonomy.name} reach it by its synonym.`,
      `Look again at taxonomy.authority, which has brackets once the genus has changed: ${taxonomy.authority}`,
      `Then: npm run species check ${id}`,
    ],
    failed: false,
  };
}

export const idOf = (name: string): string => name.toLowerCase().replaceAll(" ", "-");

/** Why a record cannot have a name; undefined where it can. */
export function refusedName({ files }: Collection, record: SpeciesRecord, name: string): string | undefined {
  const id = idOf(name);
  const named = { ...record, id, taxonomy: { ...record.taxonomy, name } };
  const unfit = problemsIn("species", named).some(({ path }) =>
    ["id", "taxonomy.name"].includes(path.join(".")),
  );
  if (unfit) return `Expected a scientific name such as "Danio rerio", found "${name}".`;
  const known = files.species.find((file) => file.name === id);
  return known && `${name} has a record: ${known.path}`;
}

/** The text of a record; what compiling knows of licences is left out. */
function textOf(collection: Collection, record: SpeciesRecord, renamed: object): string {
  const file = collection.files.species.find(({ name }) => name === record.id);
  return formatRecord({ ...renamed, sources: fieldOf(file?.json, "sources") }, jsonSchemas.species);
}

interface Named {
  readonly id: string;
  readonly name: string;
}

/** Forwards the old id, and in one step whatever led to it. */
async function forward(root: string, { files }: Collection, old: SpeciesRecord, now: Named): Promise<void> {
  const why = `${old.taxonomy.name} was the accepted name until ${now.name} was.`;
  const moved = { $schema: "../schemas/moved.schema.json", id: old.id, to: now.id, why };
  const led = files.moved.filter(({ json }) => fieldOf(json, "to") === old.id);
  await Promise.all([
    rm(join(root, `data/moved/${now.id}.json`), { force: true }),
    writeFile(join(root, `data/moved/${old.id}.json`), `${JSON.stringify(moved, null, 2)}\n`),
    ...led
      .filter(({ name }) => name !== now.id)
      .map(({ path, text }) =>
        writeFile(join(root, path), text.replace(`"to": "${old.id}"`, `"to": "${now.id}"`)),
      ),
  ]);
}

/** Changes the id, and the name that figures are of, in the files that name them; gives those files. */
async function follow(
  root: string,
  { files }: Collection,
  { id, taxonomy }: SpeciesRecord,
  now: Named,
): Promise<readonly string[]> {
  const naming = [...files.species, ...files.legal, ...files.standards].filter(({ name }) => name !== id);
  const changed = naming
    .map(({ path, text }) => ({
      path,
      text,
      next: text
        .replaceAll(`"${id}"`, `"${now.id}"`)
        .replaceAll(`"of": "${taxonomy.name}"`, `"of": "${now.name}"`),
    }))
    .filter(({ text, next }) => text !== next);
  await Promise.all(changed.map(({ path, next }) => writeFile(join(root, path), next)));
  return changed.map(({ path }) => path);
}

/** Where else the project names an id. */
async function namedElsewhere(root: string, id: string): Promise<readonly string[]> {
  if ((await gitOrNothing(root, "rev-parse", "--git-dir")) === undefined) return [];
  const found = await gitOrNothing(
    root,
    "grep",
    "-l",
    "--fixed-strings",
    "-e",
    id,
    "--",
    "src",
    "tests",
    "docs",
  );
  return (found ?? "").split("\n").filter(Boolean);
}
