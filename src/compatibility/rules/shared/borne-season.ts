import type { Range } from "../../../ranges";
import type { TraitValue } from "../../../species";

type CoolSeason = Exclude<TraitValue<"water.coolSeason">, "none">;

/**
 * What of a cool season that one needs others bear that are kept at no less than a temperature, °C; undefined where that is
 * none of it.
 */
export const borneSeason = ({ min = 0, max = min }: CoolSeason, coolest: number): Range | undefined =>
  coolest <= max ? { min: Math.max(min, coolest), max } : undefined;
