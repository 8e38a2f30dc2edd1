import type { Group } from "../../plan";
import type { Sex, SpeciesProfile } from "../../species";
import { type Lengths, lengthsOf } from "./lengths";

/** Some fish of one species, sex and age. */
export interface Fish {
  readonly species: SpeciesProfile;
  /** At least one. */
  readonly count: number;
  readonly young: boolean;
  readonly lengths: Lengths;
}

/** The fish of a group by sex and age; none where it holds other animals. */
export function fishOf(group: Group, species: SpeciesProfile): readonly Fish[] {
  if (species.taxonomy.kind !== "fish") return [];
  const { males = 0, females = 0, unsexed = 0, juveniles = 0, length: stated } = group;
  const adult = species.size?.adultLength?.value;
  const share = species.size?.standardShare?.value;
  const some = (count: number, young: boolean, sex?: Sex): readonly Fish[] =>
    count > 0
      ? [{ species, count, young, lengths: lengthsOf({ ...(sex && { sex }), young, stated, adult, share }) }]
      : [];
  return [
    ...some(males, false, "male"),
    ...some(females, false, "female"),
    ...some(unsexed, false),
    ...some(juveniles, true),
  ];
}

/** The ids of the species of fish, each once. */
export const idsOf = (fish: readonly Fish[]): readonly string[] => [
  ...new Set(fish.map(({ species }) => species.id)),
];
