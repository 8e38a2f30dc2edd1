import { compared } from "../comparing/compared";
import type { OfKind } from "../jurisdiction";
import type { Asked, Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** A longest side for one species. */
export function frontEdge(
  { species, centimetres, beyond }: OfKind<"front-edge">,
  { fish, measures }: SurveyedPlan,
): Comparison | undefined {
  if (!fish.some((some) => some.species.id === species)) return undefined;
  const asked: Asked = { min: centimetres, max: centimetres, unit: "cm", ...(beyond && { beyond: true }) };
  return { species: [species], ...compared(asked, measures("front edge")) };
}
