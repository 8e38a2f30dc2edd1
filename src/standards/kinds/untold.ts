import { idsOf } from "../fishes/fish";
import type { OfKind } from "../jurisdiction";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** What no kind can compare, told of its species or of any plan. */
export function untold(
  { because, species }: OfKind<"untold">,
  { fish }: SurveyedPlan,
): Comparison | undefined {
  const open = { answer: "undetermined", open: { reason: because } } as const;
  if (!species) return open;
  const concerned = idsOf(fish).filter((id) => species.includes(id));
  return concerned.length === 0 ? undefined : { species: concerned, ...open };
}
