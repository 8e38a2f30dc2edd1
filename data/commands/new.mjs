// Starts the record of a species, with what must be known left blank: npm run species new "Genus epithet"
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { readFolder } from "../files.mjs";
import { formatRecord } from "../format-record.mjs";
import { importSource, root } from "../source.mjs";

const { explainField, recordSchema } = await importSource("schema/species/record.ts");
const { essentialTraits, splitPath, traitTable } = await importSource("species/index.ts");

export default async function start(words) {
  const name = words.join(" ");
  const id = name.toLowerCase().replaceAll(" ", "-");
  const { taxonomy } = recordSchema.shape;
  if (!taxonomy.shape.name.safeParse(name).success || !recordSchema.shape.id.safeParse(id).success)
    return stop(`Expected a scientific name such as "Danio rerio", found "${name}".`);
  const known = (await readFolder("species")).find(
    (file) => file.name === id || file.json?.taxonomy?.synonyms?.includes(name),
  );
  if (known) return stop(`${name} has a record: ${known.path}`);

  const path = `data/species/${id}.json`;
  await writeFile(join(root, path), formatRecord(blank(id, name), recordSchema));
  console.log(`${path} waits to be filled in. Then: npm run format && npm run species check ${id}`);
  return 0;
}

function blank(id, name) {
  return {
    $schema: "../schemas/species.schema.json",
    id,
    taxonomy: { name, authority: "", family: "", order: "", kind: "" },
    names: { en: [""] },
    sources: { source: { cite: "", at: "" } },
    ...questions(),
  };
}

/** The essential traits, each with a note that says what to look for. */
function questions() {
  const sections = {};
  for (const trait of essentialTraits) {
    const [section, key] = splitPath(trait);
    const note = `To fill in: ${explainField(traitTable[trait])}`;
    sections[section] = { ...sections[section], [key]: [{ by: "source", note }] };
  }
  return sections;
}

function stop(reason) {
  console.error(reason);
  return 1;
}
