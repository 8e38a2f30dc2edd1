import { isFrozenThrough } from "./frozen";

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
