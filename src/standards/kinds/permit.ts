import { idsOf } from "../fishes/fish";
import { largeFish } from "../fishes/large";
import { missingLength } from "../fishes/missing";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** A permit for large fish: a plan does not tell whether there is one. */
export function permit(
  { longerThan, taxa }: OfKind<"permit">,
  { fish }: SurveyedPlan,
): Comparison | undefined {
  const { possibly, surely } = largeFish(fish, longerThan, taxa);
  if (possibly.length === 0) return undefined;
  const unknown = surely.length === 0 && missingLength(possibly, "adult total length");
  return {
    species: idsOf(possibly),
    answer: "undetermined",
    open: unknown || { reason: "not-given" },
  };
}
