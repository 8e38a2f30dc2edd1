import { factAt, type SpeciesProfile } from "../../species";

/**
 * Whether males of a species hold places against each other, or do something to their own sex or their whole kind; so they
 * do where nobody knows.
 */
export function malesAreRivals(species: SpeciesProfile): boolean {
  const territory = factAt(species, "space.territory")?.value;
  const acts = factAt(species, "temperament.acts")?.value;
  if (territory === undefined || acts === undefined) return true;
  const holds = territory !== "none" && territory.holder !== "female";
  return (
    holds ||
    acts.some(({ doer, target }) => doer !== "female" && (target === "own-sex" || target === "own-kind"))
  );
}
