import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** No spherical tank. A planned tank has upright walls, so only a round base may stand for a bowl. */
export function noSphere({ base }: SurveyedPlan): Comparison {
  const has = { of: "shape of the base", value: base.shape } as const;
  return base.shape === "circle"
    ? { has, answer: "undetermined", open: { reason: "not-given" } }
    : { has, answer: "met" };
}
