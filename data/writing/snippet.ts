/** A value on one line as a snippet of an editor: every word and figure in it is a place to write over, in turn. */
export function snippetOf(value: unknown): string {
  const places = { count: 0 };
  return written(value, places);
}

function written(value: unknown, places: { count: number }): string {
  if (Array.isArray(value)) return `[${value.map((item) => written(item, places)).join(", ")}]`;
  if (typeof value === "object" && value !== null) {
    const fields = Object.entries(value).map(([key, held]) => `"${key}": ${written(held, places)}`);
    return `{ ${fields.join(", ")} }`;
  }
  places.count += 1;
  return typeof value === "string" ? `"\${${places.count}:${value}}"` : `\${${places.count}:${value}}`;
}
