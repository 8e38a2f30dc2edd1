import type { SpeciesProfile, TraitPath } from "../src/species";

/** A species of which nobody knows a trait. */
export function without(species: SpeciesProfile, path: TraitPath): SpeciesProfile {
  const [section = "", trait = ""] = path.split(".");
  const { [trait]: _, ...others } = Object(Object(species)[section]);
  return { ...species, [section]: others };
}
