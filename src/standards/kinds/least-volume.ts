import { compared } from "../comparing/compared";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** At least so many litres, whatever lives in them. */
export function leastVolume({ litres, of }: OfKind<"least-volume">, plan: SurveyedPlan): Comparison {
  const asked = { min: litres, max: litres, unit: "L" };
  return compared(asked, plan.measures(of));
}
