// The forms that were bred of the species.
import { allSpecies } from "vivary/catalog";
import { applyForm, type SpeciesProfile } from "vivary/species";

/** A form with the profile of its animals. */
export interface Form {
  readonly id: string;
  readonly profile: SpeciesProfile;
}

export const formsOf = (species: SpeciesProfile): readonly Form[] =>
  Object.keys(species.forms ?? {}).map((id) => ({ id, profile: Object.freeze(applyForm(species, id)) }));

export const formCount: number = allSpecies.reduce((sum, species) => sum + formsOf(species).length, 0);
