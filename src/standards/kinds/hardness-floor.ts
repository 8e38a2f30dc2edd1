import { compare } from "../comparing/compare";
import { compared } from "../comparing/compared";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** A least hardness of water that came soft: softer water may be of another source, which a plan does not tell. */
export function hardnessFloor(
  { least }: OfKind<"hardness-floor">,
  { generalHardness }: SurveyedPlan,
): Comparison {
  const asked = { ...least, unit: "dH" };
  if (generalHardness === undefined) return compared(asked, undefined);
  const has = { of: "general hardness", min: generalHardness, max: generalHardness, unit: "dH" } as const;
  if (compare(asked, has) === "met") return { asked, has, answer: "met" };
  return { asked, has, answer: "undetermined", open: { reason: "not-given" } };
}
