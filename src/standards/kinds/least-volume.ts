import { compare } from "../compare";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** At least so many litres, whatever lives in them. */
export function leastVolume({ litres, of }: OfKind<"least-volume">, plan: SurveyedPlan): Comparison {
  const asked = { min: litres, max: litres, unit: "L" };
  const has = plan.measures(of);
  return { asked, has, answer: compare(asked, has) };
}
