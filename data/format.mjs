// Writes records one statement a line, with their keys in one order, and the JSON Schema. `--check` only tells which
// records differ.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { readFolder } from "./files.mjs";
import { formatRecord } from "./format-record.mjs";
import { schemaFile, schemaText } from "./json-schema.mjs";
import { importSource, root } from "./source.mjs";

const { recordSchema } = await importSource("schema/species/record.ts");

const check = process.argv.includes("--check");
const files = (await readFolder("species")).map((file) => ({
  ...file,
  formatted: formatRecord(file.json, recordSchema),
}));
const differing = files.filter(({ text, formatted }) => formatted !== text);
if (check && differing.length > 0) {
  console.error(`Not formatted: ${differing.map(({ path }) => path).join(", ")}. Run: npm run format`);
  process.exit(1);
}
if (!check) await writeFile(schemaFile, schemaText);
for (const { path, formatted } of differing) await writeFile(join(root, path), formatted);
console.log(check ? "Every record is formatted." : `${differing.length} records formatted.`);
