import type { SpeciesProfile } from "../species";
import { movedIds } from "../species/moved/generated";
import { allSpecies } from "./generated";

/**
 * The profile of a species, or undefined where there is none. An id that has moved, or that the trade still uses,
 * forwards to the accepted one.
 *
 * @param id - The accepted name in lower case, words joined by hyphens.
 *
 * @example
 * ```ts
 * import { speciesById } from "vivary/catalog";
 *
 * speciesById("danio-rerio")?.taxonomy.name; // => "Danio rerio"
 * speciesById("corydoras-paleatus")?.id; // => "hoplisoma-paleatum"
 * speciesById("__proto__"); // => undefined
 * ```
 */
export function speciesById(id: string): SpeciesProfile | undefined {
  const current = Object.hasOwn(movedIds, id) ? movedIds[id] : id;
  return allSpecies.find((profile) => profile.id === current);
}
