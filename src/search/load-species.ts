import { refusal } from "../errors";
import { moved } from "../shelf";
import type { SpeciesProfile } from "../species";
import { loaders } from "./generated";

/**
 * The profile of a species, loaded when it is asked for: bundlers make a chunk of each, and a page loads those it shows.
 * An id that has moved, or that the trade still uses, gives the accepted one. Names are none: `suggestSpecies` gives
 * the ids of those that bear one, and so does `findSpecies` of `vivary/catalog`.
 *
 * @param id - The accepted name in lower case, words joined by hyphens.
 * @returns A promise of the profile, which is rejected with an InvalidInputError where there is no such species.
 *
 * @example
 * ```ts
 * import { loadSpecies } from "vivary/search";
 *
 * (await loadSpecies("danio-rerio")).taxonomy.name; // => "Danio rerio"
 * (await loadSpecies("corydoras-paleatus")).id; // => "hoplisoma-paleatum"
 * ```
 */
export async function loadSpecies(id: string): Promise<SpeciesProfile> {
  const load = loaders.get(currentIds.get(id) ?? id);
  if (!load)
    throw refusal(
      "id",
      "the id of a species, such as suggestSpecies gives for a name",
      id,
      "unknown-species",
    );
  return (await load()).default;
}

const currentIds: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(moved);
