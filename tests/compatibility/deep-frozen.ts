/** A copy in which nothing can be changed: whoever tries throws. */
export function deepFrozen<Value>(value: Value): Value {
  return frozen(structuredClone(value));
}

function frozen<Value>(value: Value): Value {
  if (typeof value === "object" && value !== null) Object.values(value).forEach(frozen);
  return Object.freeze(value);
}
