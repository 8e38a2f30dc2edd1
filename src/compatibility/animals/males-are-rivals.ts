import { type Act, factAt, type SpeciesProfile } from "../../species";

/** Whom acts are aimed at that fall on other males of the kind. */
const towardsRivals: ReadonlySet<Act["target"]> = /* @__PURE__ */ new Set<Act["target"]>([
  "own-sex",
  "own-kind",
  "any",
]);

/**
 * Whether males of a species hold places against each other, or harm or chase their own sex, their kind or anybody; so they
 * do where nobody knows.
 */
export function malesAreRivals(species: SpeciesProfile): boolean {
  const territory = factAt(species, "space.territory")?.value;
  const acts = factAt(species, "temperament.acts")?.value;
  if (territory === undefined || acts === undefined) return true;
  const holds = territory !== "none" && territory.holder !== "female";
  return (
    holds ||
    acts.some(
      ({ does, doer, target }) => doer !== "female" && does !== "robs-food" && towardsRivals.has(target),
    )
  );
}
