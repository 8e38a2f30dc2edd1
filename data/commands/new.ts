// Starts the record of a species, with what must be known left blank.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas, problemsIn } from "vivary/schema";
import { essentialTraits, splitPath } from "vivary/species";
import { fieldOf } from "../fields";
import { readFolder } from "../files";
import { formatRecord } from "../format-record";
import { type Answer, refused } from "./answer";

export async function start(root: string, name: string): Promise<Answer> {
  const id = name.toLowerCase().replaceAll(" ", "-");
  const record = blank(id, name);
  const ofName = problemsIn("species", record).filter(({ path }) =>
    ["id", "taxonomy.name"].includes(path.join(".")),
  );
  if (ofName.length > 0) return refused(`Expected a scientific name such as "Danio rerio", found "${name}".`);
  const known = (await readFolder(root, "species")).find(
    (file) => file.name === id || synonymsOf(file.json).includes(name),
  );
  if (known) return refused(`${name} has a record: ${known.path}`);

  await writeFile(join(root, "data/species", `${id}.json`), formatRecord(record, jsonSchemas.species));
  const next = `npm run format && npm run species check ${id}`;
  return { lines: [`data/species/${id}.json waits to be filled in. Then: ${next}`], failed: false };
}

function synonymsOf(json: unknown): readonly unknown[] {
  const synonyms = fieldOf(fieldOf(json, "taxonomy"), "synonyms");
  return Array.isArray(synonyms) ? synonyms : [];
}

const blank = (id: string, name: string) => ({
  $schema: "../schemas/species.schema.json",
  id,
  taxonomy: { name, authority: "", family: "", order: "", kind: "" },
  names: { en: [""] },
  sources: { source: { cite: "", at: "" } },
  ...questions(),
});

/** The essential traits, each with a note that says what to look for. */
function questions(): Readonly<Record<string, object>> {
  const sections = new Map<string, object>();
  for (const trait of essentialTraits) {
    const [section, key] = splitPath(trait);
    const note = `To fill in: ${meaningOf(section, key)}`;
    sections.set(section, { ...sections.get(section), [key]: [{ by: "source", note }] });
  }
  return Object.fromEntries(sections);
}

/** What the schema says of a trait. */
const meaningOf = (...path: readonly string[]) =>
  fieldOf(
    path.reduce((schema: unknown, key) => fieldOf(fieldOf(schema, "properties"), key), jsonSchemas.species),
    "description",
  );
