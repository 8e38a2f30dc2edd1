/**
 * A record as its file should read: one statement and one source a line, and keys in the order in which the schema
 * declares them. Keys that the record chooses itself keep their order.
 */
export const formatRecord = (record, recordSchema) => `${block(record, recordSchema, "")}\n`;

/** Over several lines, but what stands in lists on one each, and so each source. */
function block(value, schema, indent, print = block) {
  const deeper = `${indent}  `;
  if (Array.isArray(value) && value.some(isObject)) {
    return `[\n${value.map((item) => deeper + inline(item, within(schema))).join(",\n")}\n${indent}]`;
  }
  if (!isObject(value)) return inline(value, schema);
  const fields = fieldsOf(value, schema).map(([key, held]) => {
    const inner = within(schema, key);
    const text = key === "sources" ? block(held, inner, deeper, inline) : print(held, inner, deeper);
    return `${deeper}${JSON.stringify(key)}: ${text}`;
  });
  return fields.length > 0 ? `{\n${fields.join(",\n")}\n${indent}}` : "{}";
}

/** On one line. */
function inline(value, schema) {
  if (Array.isArray(value)) return `[${value.map((item) => inline(item, within(schema))).join(", ")}]`;
  if (!isObject(value)) return JSON.stringify(value);
  const fields = fieldsOf(value, schema).map(
    ([key, held]) => `${JSON.stringify(key)}: ${inline(held, within(schema, key))}`,
  );
  return fields.length > 0 ? `{ ${fields.join(", ")} }` : "{}";
}

/** The fields in the order in which the schema declares them; those that are the record's own keep theirs. */
function fieldsOf(object, schema) {
  const { shape, innerType, options } = schema?.def ?? {};
  if (innerType ?? options) return fieldsOf(object, innerType ?? options[0]);
  const order = Object.keys(shape ?? {});
  const rank = (key) => (order.includes(key) ? order.indexOf(key) : order.length);
  return Object.entries(object).sort(([a], [b]) => rank(a) - rank(b));
}

/** The schema of a field, past what only wraps it. */
function within(schema, key) {
  const { shape, element, valueType, innerType, options } = schema?.def ?? {};
  if (innerType) return within(innerType, key);
  if (options) return within(options[0], key);
  return shape?.[key] ?? element ?? valueType;
}

const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);
