import { overlap, type PartialRange } from "../../../ranges";
import type { TraitValue } from "../../../species";

type CoolSeason = Exclude<TraitValue<"water.coolSeason">, "none">;

/**
 * What all of some animals bear of a cool season that one needs, °C: as much of it as is no cooler than they are kept in;
 * undefined where that is none. Of whom nobody knows what they are kept in counts as bearing it.
 */
export const borneSeason = (
  { min = 0, max = min }: CoolSeason,
  water: readonly (TraitValue<"water.temperature"> | undefined)[],
): PartialRange | undefined =>
  water.reduce<PartialRange | undefined>(
    (borne, figures) => borne && overlap(borne, { min: figures?.kept.min ?? min }),
    { min, max },
  );
