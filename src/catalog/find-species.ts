import { spellings } from "../folded";
import { applyForm, type SpeciesProfile } from "../species";
import { typedName } from "../typed-name";
import { allSpecies } from "./all-species";
import { type Bearer, bearersOfNames, hasBearer } from "./bearers-of-names";

/**
 * The species that bear a name, the best match first: by accepted name or id, by an id once used or a synonym, by
 * vernacular name in any language, by the name of a form. Case, accents, apostrophes and hyphens do not matter, ä, ö
 * and ü are found as ae, oe and ue as well, and `L46` as `L046`. A form's name gives the profile with the form applied.
 *
 * @param name - At most 200 characters.
 * @throws InvalidInputError for anything but a text, and for a longer one.
 *
 * @example
 * ```ts
 * import { findSpecies } from "vivary/catalog";
 *
 * findSpecies("barbus tetrazona")[0]?.id; // => "puntigrus-tetrazona"
 * findSpecies("Long-fin Tiger Barb")[0]?.form; // => "long-fin"
 * findSpecies("unicorn"); // => []
 * ```
 */
export function findSpecies(name: string): readonly SpeciesProfile[] {
  const sought = spellings(typedName(name, "name"));
  bearers ??= bearersOfNames(allSpecies);
  const found: Bearer[] = [];
  for (const spelling of sought)
    for (const bearer of bearers.get(spelling) ?? []) if (!hasBearer(found, bearer)) found.push(bearer);
  return found.map(({ profile, form }) => (form === undefined ? profile : applyForm(profile, form)));
}

let bearers: ReadonlyMap<string, readonly Bearer[]> | undefined;
