import { together } from "../comparing/together";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** One species with its own kind. */
export function ownGroup(
  { species, least }: OfKind<"own-group">,
  { fish }: SurveyedPlan,
): Comparison | undefined {
  const own = fish.filter((some) => some.species.id === species);
  const count = own.reduce((sum, some) => sum + some.count, 0);
  return count === 0 ? undefined : together([species], [count], least);
}
