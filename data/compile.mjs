// Writes what src imports of data: profiles, records, ids that moved, and official requirements.
import { mkdir, rm, writeFile } from "node:fs/promises";
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

const moved = (await readFolder("moved")).map(({ json }) => [json.id, json.to]);
const jurisdictions = (await readFolder("standards")).map(({ json }) => json);

/** A text as a string of JavaScript in letters that mean nothing elsewhere, be it in a comment or in a page. */
const quoted = (text) =>
  JSON.stringify(text).replaceAll(
    /[^ -~]|</g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/** A value as JSON in a string: it loads twice as fast as the same object written in JavaScript. */
const jsonOf = (value) => quoted(JSON.stringify(value));

/** The list of all, each as its id and its JSON. */
const textsModule = (items) => `/** Every species by id, as JSON. */
export const texts: readonly (readonly [id: string, json: string])[] = [
${items.map((item) => `[${quoted(item.id)}, ${jsonOf(item)}],\n`).join("")}];
`;

/** The module of one species, which needs no other. */
const speciesModule = (type, item) => `import type { ${type} } from "../../species";

const species: ${type} = /* @__PURE__ */ JSON.parse(${jsonOf(item)}, (_, held) => Object.freeze(held));

export default species;
`;

const forwardModule = (to) => `export { default } from ${quoted(`./${to}.js`)};\n`;

const source = (...path) => join(root, "src", ...path);

async function writeFloor(floor, type, items) {
  await rm(source(floor, "species"), { recursive: true, force: true });
  await mkdir(source(floor, "species"), { recursive: true });
  await Promise.all([
    writeFile(source(floor, "generated.ts"), textsModule(items)),
    ...items.map((item) => writeFile(source(floor, "species", `${item.id}.ts`), speciesModule(type, item))),
    ...moved.map(([id, to]) => writeFile(source(floor, "species", `${id}.ts`), forwardModule(to))),
  ]);
}

await writeFloor("catalog", "SpeciesProfile", profiles);
await writeFloor("evidence", "SpeciesRecord", records);
await writeFile(
  source("shelf/generated.ts"),
  `/** Ids that no species bears any more, or that the trade uses, with the id they forward to. */
export const moved: readonly (readonly [id: string, to: string])[] = JSON.parse(${jsonOf(moved)});
`,
);
await writeFile(
  source("standards/generated.ts"),
  `import type { Jurisdiction } from "./jurisdiction";

/** Every jurisdiction, by id. */
export const jurisdictions: readonly Jurisdiction[] = /* @__PURE__ */ JSON.parse(${jsonOf(jurisdictions)});
`,
);
console.log(`${records.length} species compiled.`);
