import type { SpeciesProfile } from "../species";
import { allSpecies } from "./generated";

/**
 * The profile of a species, or undefined where there is none.
 *
 * @param id - The accepted name in lower case, words joined by hyphens.
 *
 * @example
 * ```ts
 * import { speciesById } from "vivary/catalog";
 *
 * speciesById("danio-rerio")?.taxonomy.name; // => "Danio rerio"
 * speciesById("__proto__"); // => undefined
 * ```
 */
export function speciesById(id: string): SpeciesProfile | undefined {
  return allSpecies.find((profile) => profile.id === id);
}
