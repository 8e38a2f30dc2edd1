// The families of the catalog.
import { allSpecies } from "vivary/catalog";
import type { SpeciesProfile } from "vivary/species";

/** A family with its species. */
export interface Family {
  readonly name: string;
  readonly order: string;
  readonly members: readonly SpeciesProfile[];
}

/** Those that have species, by name. */
export const families: readonly Family[] = [...new Set(allSpecies.map(({ taxonomy }) => taxonomy.family))]
  .sort()
  .map((name) => {
    const members = allSpecies.filter(({ taxonomy }) => taxonomy.family === name);
    return { name, order: members[0]?.taxonomy.order ?? "", members };
  });
