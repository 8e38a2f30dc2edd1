import { decimal } from "../../decimal";
import { compared } from "../comparing/compared";
import { idsOf } from "../fishes/fish";
import { missingLength } from "../fishes/missing";
import type { OfKind } from "../jurisdiction";
import type { Asked, Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** A side of the tank of so many body lengths of the largest fish. */
export function bodyLengths(
  { side, lengths, by, species }: OfKind<"body-lengths">,
  { fish, measures }: SurveyedPlan,
): Comparison | undefined {
  const concerned = fish.filter((some) => !species || species.includes(some.species.id));
  if (concerned.length === 0) return undefined;
  const spans = concerned.map((some) => some.lengths[by]);
  const longest = Math.max(...spans.map((span) => span?.max ?? Number.POSITIVE_INFINITY));
  const asked: Asked = {
    min: decimal(lengths * Math.max(...spans.map((span) => span?.min ?? 0))),
    ...(Number.isFinite(longest) && { max: decimal(lengths * longest) }),
    unit: "cm",
    by,
  };
  const comparison = compared(asked, measures(side), missingLength(concerned, by));
  return { ...(species && { species: idsOf(concerned) }), ...comparison };
}
