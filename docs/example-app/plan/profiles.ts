import { loadSpecies } from "vivary/search";
import type { SpeciesProfile } from "vivary/species";

const known = new Map<string, SpeciesProfile>();

/** Loads species, each by itself and once. Those that there are not are left out. */
export async function learn(names: readonly string[]): Promise<void> {
  const missing = names.filter((name) => !known.has(name));
  const loaded = await Promise.allSettled(missing.map(loadSpecies));
  for (const [index, result] of loaded.entries()) {
    const name = missing[index];
    if (name !== undefined && result.status === "fulfilled") known.set(name, result.value);
  }
}

/** The profile of a species that has been loaded. */
export const profileOf = (name: string): SpeciesProfile | undefined => known.get(name);
