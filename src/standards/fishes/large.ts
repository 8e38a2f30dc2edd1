import type { Fish } from "./fish";

/** The fish a requirement for large ones may be about. */
interface Large {
  /** Those that surely or possibly are large, and those of which nothing is known. */
  readonly possibly: readonly Fish[];
  readonly surely: readonly Fish[];
}

/** The fish longer than so many cm when adult, or of families that count at any length. */
export function largeFish(fish: readonly Fish[], longerThan: number, families: readonly string[]): Large {
  const ofFamily = ({ species }: Fish) => families.includes(species.taxonomy.family);
  const adult = ({ lengths }: Fish) =>
    lengths["adult total length"] ?? { min: 0, max: Number.POSITIVE_INFINITY };
  return {
    possibly: fish.filter((some) => ofFamily(some) || adult(some).max > longerThan),
    surely: fish.filter((some) => ofFamily(some) || adult(some).min > longerThan),
  };
}
