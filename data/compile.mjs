// Writes what src imports of data: profiles, records, ids that moved, and official requirements.
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { readFolder } from "./files.mjs";
import { importSource, root } from "./source.mjs";

const { safeParseSpecies, describeProblem } = await importSource("schema/index.ts");
const { resolve } = await importSource("species/index.ts");

const legal = (await readFolder("legal")).flatMap(({ json }) => json.listings);

/** The laws that name a species, its genus or its family. */
function listingsOf({ id, taxonomy }) {
  const names = [taxonomy.name, taxonomy.name.split(" ")[0], taxonomy.family];
  const naming = legal.filter(
    ({ taxa, except = [] }) => taxa.some((taxon) => names.includes(taxon)) && !except.includes(id),
  );
  return naming.map(({ taxa, except, ...listing }) => listing);
}

/** `puntigrus-tetrazona` as `puntigrusTetrazona`. */
const exportName = (id) => id.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());

const records = (await readFolder("species")).map(({ path, json }) => {
  const parsed = safeParseSpecies(json);
  if (parsed.success) return parsed.record;
  const problems = parsed.problems.map((problem) => `  ${describeProblem(problem)}`).join("\n");
  throw new Error(`${path} is no species record:\n${problems}`);
});

const profiles = records.map((record) => {
  const listings = listingsOf(record);
  return { ...resolve(record), ...(listings.length > 0 && { listings }) };
});

const moved = Object.fromEntries((await readFolder("moved")).map(({ json }) => [json.id, json.to]));

/** Text as a literal: JSON that is parsed loads twice as fast as the same object written in JavaScript. */
const quoted = (text) => `'${text.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}'`;

/** A module with one named export a species and the list of all. */
function moduleOf(type, items, list) {
  const exports = items.map((item) => {
    const { name } = item.taxonomy;
    return `/** *${name}*, ${(item.names.en ?? [name])[0]}. */\nexport const ${exportName(item.id)}: ${type} = /* @__PURE__ */ JSON.parse(${quoted(JSON.stringify(item))});\n`;
  });
  const all = items.map(({ id }) => exportName(id)).join(", ");
  return `import type { ${type} } from "../species";\n\n${exports.join("\n")}\n/** Every species, by id. */\nexport const ${list}: readonly ${type}[] = [${all}];\n`;
}

const movedModule = `/** Ids that no species bears any more, or that the trade uses, with the id they forward to. */\nexport const movedIds: Readonly<Record<string, string>> = ${JSON.stringify(moved)};\n`;

const jurisdictions = (await readFolder("standards")).map(({ json: { $schema, ...held } }) => held);
const standards = `import type { Jurisdiction } from "./jurisdiction";\n\n/** Every jurisdiction, by id. */\nexport const jurisdictions: readonly Jurisdiction[] = ${JSON.stringify(jurisdictions)};\n`;

await mkdir(join(root, "src/species/moved"), { recursive: true });
await writeFile(join(root, "src/species/moved/generated.ts"), movedModule);
await writeFile(join(root, "src/standards/generated.ts"), standards);
await writeFile(join(root, "src/catalog/generated.ts"), moduleOf("SpeciesProfile", profiles, "allSpecies"));
await writeFile(join(root, "src/evidence/generated.ts"), moduleOf("SpeciesRecord", records, "allRecords"));
console.log(`${records.length} species compiled.`);
