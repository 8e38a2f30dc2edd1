import { isFrozenThrough } from "./frozen";

/** What makes a value on the first call, and gives the same one ever after. */
export function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Where values are held by their keys. */
interface Held<Key, Value> {
  get(key: Key): Value | undefined;
  set(key: Key, value: Value): unknown;
}

/** What makes a value for each key on its first call, and gives the same one ever after. */
export function onceOfEach<Key, Value extends NonNullable<unknown>>(
  make: (key: Key) => Value,
  known: Held<Key, Value> = new Map(),
): (key: Key) => Value {
  return (key) => {
    const held = known.get(key);
    if (held !== undefined) return held;
    const made = make(key);
    known.set(key, made);
    return made;
  };
}

/** The same for objects, of which it keeps none alive. */
export const onceOfEachObject = <Key extends object, Value extends NonNullable<unknown>>(
  make: (key: Key) => Value,
): ((key: Key) => Value) => onceOfEach(make, new WeakMap());

/** What is made of something, remembered where nobody can change that any more. */
export function remembered<Given extends object, Made>(make: (given: Given) => Made): (given: Given) => Made {
  const known = new WeakMap<Given, { readonly made: Made }>();
  return (given) => {
    const held = known.get(given);
    if (held) return held.made;
    const made = make(given);
    if (isFrozenThrough(given)) known.set(given, { made });
    return made;
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
