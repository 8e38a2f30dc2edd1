import { pointedAt } from "../reading/pointer";
import type { Schema } from "../reading/schema-at";

type Printer = (value: unknown, schema: Schema | undefined, indent: string) => string;

/**
 * A record as its file should read: one statement and one source a line, and keys in the order in which the schema
 * declares them. Keys that the record chooses itself keep their order.
 */
export function formatRecord(record: unknown, recordSchema: Schema): string {
  /** The schema itself, where a reference or a choice stands for it. */
  const meant = (schema: Schema | undefined): Schema | undefined => {
    if (schema?.$ref) return meant(pointedAt<Schema>(recordSchema, schema.$ref));
    const isChoice = schema?.anyOf && !schema.properties && !schema.items;
    return isChoice ? meant(schema.anyOf?.[0]) : schema;
  };

  /** The schema of a field, or of the entries of a list. */
  const within = (schema: Schema | undefined, key?: string): Schema | undefined => {
    const { properties, additionalProperties, items } = meant(schema) ?? {};
    if (key === undefined) return items;
    const others = typeof additionalProperties === "object" ? additionalProperties : undefined;
    return properties?.[key] ?? others;
  };

  const fieldsOf = (object: object, schema: Schema | undefined): [string, unknown][] => {
    const order = Object.keys(meant(schema)?.properties ?? {});
    const rank = (key: string) => (order.includes(key) ? order.indexOf(key) : order.length);
    return Object.entries(object).sort(([a], [b]) => rank(a) - rank(b));
  };

  /** On one line. */
  const inline: Printer = (value, schema) => {
    if (Array.isArray(value)) return `[${value.map((item) => inline(item, within(schema), "")).join(", ")}]`;
    if (!isObject(value)) return JSON.stringify(value);
    const fields = fieldsOf(value, schema).map(
      ([key, held]) => `${JSON.stringify(key)}: ${inline(held, within(schema, key), "")}`,
    );
    return fields.length > 0 ? `{ ${fields.join(", ")} }` : "{}";
  };

  /** Over several lines, but what stands in lists on one each. */
  const block: Printer = (value, schema, indent) => {
    const deeper = `${indent}  `;
    if (Array.isArray(value) && value.some(isObject)) {
      const items = value.map((item) => deeper + inline(item, within(schema), ""));
      return `[\n${items.join(",\n")}\n${indent}]`;
    }
    return isObject(value) ? lines(value, schema, indent, block) : inline(value, schema, "");
  };

  /** An object over several lines, a field each. */
  const lines = (value: object, schema: Schema | undefined, indent: string, print: Printer): string => {
    const deeper = `${indent}  `;
    const fields = fieldsOf(value, schema).map(([key, held]) => {
      const inner = within(schema, key);
      const oneEach = key === "sources" && isObject(held);
      const text = oneEach ? lines(held, inner, deeper, inline) : print(held, inner, deeper);
      return `${deeper}${JSON.stringify(key)}: ${text}`;
    });
    return fields.length > 0 ? `{\n${fields.join(",\n")}\n${indent}}` : "{}";
  };

  return `${block(record, recordSchema, "")}\n`;
}

const isObject = (value: unknown): value is object =>
  typeof value === "object" && value !== null && !Array.isArray(value);
