import { compare } from "../compare";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** A longest side for one species. */
export function frontEdge(
  { species, centimetres, beyond }: OfKind<"front-edge">,
  { fish, measures }: SurveyedPlan,
): Comparison | undefined {
  if (!fish.some((some) => some.species.id === species)) return undefined;
  const asked = { min: centimetres, max: centimetres, unit: "cm" };
  const has = measures("front edge");
  return { species: [species], asked, has, answer: compare(asked, has, beyond) };
}
