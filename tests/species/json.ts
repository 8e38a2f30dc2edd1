/** A place in a JSON document. */
export type Place = readonly (string | number)[];

/** Every place within a value, the outermost first. */
export function placesIn(value: unknown, place: Place = []): readonly Place[] {
  if (typeof value !== "object" || value === null) return [place];
  const inner = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return [place, ...inner.flatMap(([key, held]) => placesIn(held, [...place, key]))];
}

/** What stands at a place. */
export function at(value: unknown, place: Place): unknown {
  return place.reduce<unknown>(
    (held, key) => (typeof held === "object" && held !== null ? Reflect.get(held, key) : undefined),
    value,
  );
}

/** A copy with something else at a place, even at `__proto__`; at the end of a list that has no such place. */
export function withAt(value: unknown, place: Place, put: unknown): unknown {
  const [key] = place.slice(-1);
  if (key === undefined) return put;
  const copy = structuredClone(value);
  const holder = at(copy, place.slice(0, -1));
  if (typeof holder !== "object" || holder === null) return copy;
  if (Array.isArray(holder) && typeof key === "string") holder.push(put);
  else
    Object.defineProperty(holder, key, { value: put, configurable: true, enumerable: true, writable: true });
  return copy;
}

/** A copy without what stands at a place. */
export function without(value: unknown, place: Place): unknown {
  const [key] = place.slice(-1);
  const copy = structuredClone(value);
  const holder = at(copy, place.slice(0, -1));
  if (key === undefined || typeof holder !== "object" || holder === null) return copy;
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else Reflect.deleteProperty(holder, key);
  return copy;
}
