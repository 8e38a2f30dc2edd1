// Checks the records as one collection, beyond what each must be by itself. `--write` mends the JSON Schema.
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { readFolder } from "./files.mjs";
import { importSource, root } from "./source.mjs";

const { describeProblem, safeParseSpecies, speciesJsonSchema } =
  await importSource("species/schema/index.ts");
const { resolve } = await importSource("species/resolve.ts");
const { traitPaths, traitTable } = await importSource("species/traits.ts");

const species = await readFolder("species");
const sources = await readFolder("sources");
const wellFormed = species.filter(({ json }) => safeParseSpecies(json).success);
const ids = wellFormed.map(({ json }) => json.id);

/** Each check takes the collection and answers one line a problem. */
const checks = {
  "A record is well formed": () =>
    species.flatMap(({ path, json }) => {
      const parsed = safeParseSpecies(json);
      return parsed.success ? [] : parsed.problems.map((problem) => `${path}: ${describeProblem(problem)}`);
    }),
  "A file is named after its id": () => [
    ...misnamed(species, (json) => json?.id),
    ...misnamed(sources, (json) => json?.id),
  ],
  "A cited source has a file, and a file is cited": () => {
    const cited = new Set(
      species.flatMap(({ json }) => Object.values(json?.sources ?? {}).map((source) => source?.cite)),
    );
    const known = new Set(sources.map(({ name }) => name));
    return [
      ...[...cited]
        .filter((cite) => !known.has(cite))
        .map((cite) => `data/sources/${cite}.json is cited and missing`),
      ...[...known]
        .filter((name) => !cited.has(name))
        .map((name) => `data/sources/${name}.json is cited by no record`),
    ];
  },
  "A species it interbreeds with says so too, if it has a record": () =>
    wellFormed.flatMap(({ path, json }) =>
      partnersOf(json)
        .filter((id) => ids.includes(id) && !partnersOf(recordOf(id)).includes(json.id))
        .map((id) => `${path}: interbreeds with ${id}, whose record does not name ${json.id}`),
    ),
  "Every essential trait is stated": () =>
    wellFormed.flatMap(({ path, json }) => {
      const profile = resolve(json);
      return traitPaths
        .filter((trait) => traitTable[trait].essential && !at(profile, trait))
        .map((trait) => `${path}: ${trait} is essential and unknown`);
    }),
};

function misnamed(files, idOf) {
  return files
    .filter(({ name, json }) => idOf(json) !== name)
    .map(({ path, json }) => `${path}: id is ${idOf(json)}`);
}

const at = (object, path) => path.split(".").reduce((held, key) => held?.[key], object);
const recordOf = (id) => wellFormed.find(({ json }) => json.id === id).json;
const partnersOf = (record) =>
  (record.reproduction?.interbreedsWith ?? [])
    .map(({ value }) => value)
    .filter((value) => value && value !== "none");

const problems = Object.entries(checks).flatMap(([name, check]) => check().map((line) => `${name}. ${line}`));

const schemaFile = join(root, "data/species.schema.json");
const schema = `${JSON.stringify(speciesJsonSchema, null, 2)}\n`;
if (process.argv.includes("--write")) await writeFile(schemaFile, schema);
else if ((await readFile(schemaFile, "utf8").catch(() => "")) !== schema)
  problems.push("data/species.schema.json is stale: npm run format");

for (const problem of problems) console.error(problem);
console.log(`${species.length} records, ${sources.length} sources, ${problems.length} problems.`);
process.exit(problems.length > 0 ? 1 : 0);
