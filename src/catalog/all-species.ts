import { shelf } from "../shelf";
import type { SpeciesProfile } from "../species";
import { texts } from "./generated";

const profiles = shelf<SpeciesProfile>(texts);

/** The profile of every species, by id. Each is parsed when it is first read, and cannot be changed. */
export const allSpecies: readonly SpeciesProfile[] = profiles.all;

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
  return profiles.byId(id);
}
