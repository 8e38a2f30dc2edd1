/** The value itself, it and all its parts frozen. For plain data of the library's own making, never for what was given. */
export function frozen<Value>(value: Value): Value {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  for (const held of Object.values(value)) if (typeof held === "object") frozen(held);
  return Object.freeze(value);
}

/** A copy of plain data that nobody can change. */
export const ownCopy = <Value>(value: Value): Value => frozen(JSON.parse(JSON.stringify(value)));

/** How deep something may lie and still be looked at. */
const deepest = 16;

/** Whether nobody can change a value or any of its parts. What lies too deep may be changed for all that is known. */
export function isFrozenThrough(value: unknown, depth = 0): boolean {
  if (typeof value !== "object" || value === null) return true;
  return (
    depth < deepest &&
    Object.isFrozen(value) &&
    Object.values(value).every((held) => isFrozenThrough(held, depth + 1))
  );
}
