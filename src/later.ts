/** What makes a value on the first call, and gives the same one ever after. */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Gives what it holds fields that are made when they are first read, and freezes it. */
export function frozenWhenRead<Held extends object>(
  held: Held,
  makers: Iterable<readonly [key: PropertyKey, make: () => unknown]>,
): Held {
  for (const [key, make] of makers) {
    Object.defineProperty(held, key, { get: once(make), enumerable: true });
  }
  return Object.freeze(held);
}
