import { allSpecies } from "vivary/catalog";
import type { SpeciesProfile } from "vivary/species";
import { formsOf } from "./forms";

/** The profiles of all species and forms, each of which has a page. */
export const allProfiles: readonly SpeciesProfile[] = allSpecies.flatMap((species) => [
  species,
  ...formsOf(species).map(({ profile }) => profile),
]);
