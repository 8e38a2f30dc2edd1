import { isObject } from "../../is-object";

/**
 * The species that a saved plan names, each once, as they stand in it: those to load before it is parsed. Whatever
 * cannot be read is left out; never throws.
 *
 * @example
 * ```ts
 * import { speciesIn } from "vivary/plan";
 *
 * speciesIn({ groups: [{ species: "danio-rerio" }, { species: "Betta splendens" }] }); // => ["danio-rerio", "Betta splendens"]
 * speciesIn(undefined); // => []
 * ```
 */
export function speciesIn(saved: unknown): readonly string[] {
  try {
    const groups = isObject(saved) ? saved.groups : undefined;
    if (!Array.isArray(groups)) return [];
    const names = groups.flatMap((group: unknown) => (isObject(group) ? [group.species] : []));
    return [...new Set(names.filter((name) => typeof name === "string"))];
  } catch {
    return [];
  }
}
