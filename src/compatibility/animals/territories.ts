import type { Kin } from "../../plan";
import type { TraitValue } from "../../species";

/** A place that is defended. */
export type Territory = Exclude<TraitValue<"space.territory">, "none">;

/**
 * How many territories the animals of a species hold. Where the sexes are not known, half of them count as male; where
 * their number is not known, they hold one.
 */
export function claimsOf(
  { holder }: Pick<Territory, "holder">,
  { count, males, females, mayHave }: Kin,
): number {
  const half = count === undefined ? undefined : Math.ceil(count / 2);
  const of = (sex: "male" | "female", counted: number | undefined) =>
    mayHave[sex] ? (counted ?? half ?? 1) : 0;
  if (holder === "each") return count ?? 1;
  if (holder === "male") return of("male", males);
  if (holder === "female") return of("female", females);
  return count === 1 ? 0 : Math.min(of("male", males), of("female", females), Math.floor((count ?? 2) / 2));
}
