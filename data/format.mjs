// Writes records one statement a line, with their keys in one order. `--check` only tells which files differ.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { readFolder } from "./files.mjs";
import { importSource, root } from "./source.mjs";

const { recordSchema } = await importSource("species/schema/record.ts");

/** The schema of a field, past what only wraps it. */
function within(schema, key) {
  const { shape, element, valueType, innerType, options } = schema?.def ?? {};
  if (innerType) return within(innerType, key);
  if (options) return within(options[0], key);
  return shape?.[key] ?? element ?? valueType;
}

/** The fields in the order in which the schema declares them; those that are the record's own keep theirs. */
function fieldsOf(object, schema) {
  const { shape, innerType, options } = schema?.def ?? {};
  if (innerType ?? options) return fieldsOf(object, innerType ?? options[0]);
  const order = Object.keys(shape ?? {});
  const rank = (key) => (order.includes(key) ? order.indexOf(key) : order.length);
  return Object.entries(object).sort(([a], [b]) => rank(a) - rank(b));
}

const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);

/** On one line. */
function inline(value, schema) {
  if (Array.isArray(value)) return `[${value.map((item) => inline(item, within(schema))).join(", ")}]`;
  if (!isObject(value)) return JSON.stringify(value);
  const fields = fieldsOf(value, schema).map(
    ([key, held]) => `${JSON.stringify(key)}: ${inline(held, within(schema, key))}`,
  );
  return fields.length > 0 ? `{ ${fields.join(", ")} }` : "{}";
}

/** Over several lines, but a statement and a source on one each. */
function block(value, schema, indent) {
  const deeper = `${indent}  `;
  if (Array.isArray(value) && value.some(isObject)) {
    return `[\n${value.map((item) => deeper + inline(item, within(schema))).join(",\n")}\n${indent}]`;
  }
  if (!isObject(value)) return inline(value, schema);
  const fields = fieldsOf(value, schema).map(([key, held]) => {
    const print = schema === recordSchema.shape.sources ? inline : block;
    return `${deeper}${JSON.stringify(key)}: ${print(held, within(schema, key), deeper)}`;
  });
  return fields.length > 0 ? `{\n${fields.join(",\n")}\n${indent}}` : "{}";
}

/** A record as its file should read. */
export const formatRecord = (record) => `${block(record, recordSchema, "")}\n`;

const check = process.argv.includes("--check");
const differing = (await readFolder("species")).filter(({ json, text }) => formatRecord(json) !== text);
if (check && differing.length > 0) {
  console.error(`Not formatted: ${differing.map(({ path }) => path).join(", ")}. Run: npm run format`);
  process.exit(1);
}
for (const { path, json } of differing) await writeFile(join(root, path), formatRecord(json));
console.log(check ? "Every record is formatted." : `${differing.length} records formatted.`);
