import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** No curved walls. */
export function straightWalls({ base }: SurveyedPlan): Comparison {
  const curved = base.shape === "bowed" ? base.bow > 0 : base.shape === "circle" || base.shape === "sector";
  return {
    has: { of: "shape of the base", value: base.shape },
    answer: curved ? "not-met" : "met",
  };
}
