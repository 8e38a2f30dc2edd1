/** The value itself, it and all its parts frozen. For plain data of the library's own making, never for what was given. */
export function frozen<Value>(value: Value): Value {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  for (const held of Object.values(value)) frozen(held);
  return Object.freeze(value);
}
