import type { Kin } from "../../plan";
import type { TraitValue } from "../../species";

/** A place that is defended. */
export type Territory = Exclude<TraitValue<"space.territory">, "none">;

/** How many of some animals of unknown sex count as of one: half, and at least two, since no two are a pair for certain. */
export const likelyOfSex = (count: number): number => Math.max(Math.ceil(count / 2), Math.min(count, 2));

/**
 * How many territories the animals of a species hold. Where the sexes are not known, half of them count as male, and at
 * least two; where their number is not known, they hold one.
 */
export function claimsOf(
  { holder }: Pick<Territory, "holder">,
  { count, males, females, mayHave }: Kin,
): number {
  const likely = count === undefined ? undefined : likelyOfSex(count);
  const of = (sex: "male" | "female", counted: number | undefined) =>
    mayHave[sex] ? (counted ?? likely ?? 1) : 0;
  if (holder === "each") return count ?? 1;
  if (holder === "male") return of("male", males);
  if (holder === "female") return of("female", females);
  return count === 1 ? 0 : Math.min(of("male", males), of("female", females), Math.floor((count ?? 2) / 2));
}
