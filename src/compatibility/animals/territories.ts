import type { Kin } from "../../plan";
import type { Sex, TraitValue } from "../../species";

/** A place that is defended. */
export type Territory = Exclude<TraitValue<"space.territory">, "none">;

/** How many of some animals of unknown sex count as of one: half, and at least two, since no two are a pair for certain. */
const likelyOfSex = (count: number): number => Math.max(Math.ceil(count / 2), Math.min(count, 2));

/** How many of some animals are of a sex: those of which it is stated, and of the others as many as are likely. */
export function numberOfSex(
  sex: Sex,
  { count, males, females, some }: Kin & { readonly count: number },
): number {
  const counted = sex === "male" ? males : females;
  if (counted !== undefined) return counted;
  const { male = 0, female = 0 } = some ?? {};
  return (sex === "male" ? male : female) + likelyOfSex(count - male - female);
}

/**
 * How many territories the animals of a species hold. Of those whose sex nobody knows half count as male, and at least two;
 * where their number is not known, they hold one.
 */
export function claimsOf({ holder }: Pick<Territory, "holder">, kin: Kin): number {
  const { count } = kin;
  const of = (sex: Sex) => {
    if (!kin.mayHave[sex]) return 0;
    if (count !== undefined) return numberOfSex(sex, { ...kin, count });
    return kin[`${sex}s`] ?? 1;
  };
  if (holder === "each") return count ?? 1;
  if (holder !== "pair") return of(holder);
  return count === 1 ? 0 : Math.min(of("male"), of("female"), Math.floor((count ?? 2) / 2));
}
