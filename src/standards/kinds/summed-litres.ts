import { decimal } from "../../decimal";
import { compared } from "../comparing/compared";
import { missingLength } from "../fishes/missing";
import type { LengthClass, OfKind, Requirement } from "../jurisdiction";
import type { Asked, Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/**
 * So many litres for each centimetre or for each fish by classes of length, summed over all fish. Of a text that covers
 * other animals as well, and does not say how these are measured, only the lower end is known where there are any.
 */
export function summedLitres(
  rule: OfKind<"litres-each-centimetre" | "litres-each-fish">,
  { fish, hasOthers, measures }: SurveyedPlan,
  covers: Requirement["covers"] = "fish",
): Comparison | undefined {
  const countsOthers = covers === "animals" && hasOthers;
  const unknown = missingLength(fish, rule.by) ?? ({ reason: "no-figure" } as const);
  if (fish.length === 0) return countsOthers ? { answer: "undetermined", open: unknown } : undefined;
  const litresOf = (length: number | undefined) => {
    const litres = length === undefined ? undefined : litresAt(rule.classes, length);
    if (litres === undefined || length === undefined) return undefined;
    return rule.kind === "litres-each-centimetre" ? litres * length : litres;
  };
  const needs = fish.map(({ count, lengths }) => ({
    count,
    min: litresOf(lengths[rule.by]?.min),
    max: litresOf(lengths[rule.by]?.max),
  }));
  const min = needs.reduce((sum, need) => sum + need.count * (need.min ?? 0), 0);
  const max = needs.reduce((sum, need) => sum + need.count * (need.max ?? Number.POSITIVE_INFINITY), 0);
  const asked: Asked = {
    min: decimal(min),
    ...(Number.isFinite(max) && !countsOthers && { max: decimal(max) }),
    unit: "L",
    by: rule.by,
  };
  return compared(asked, measures(rule.of), unknown);
}

/** Litres of the class a length falls in; undefined beyond the last. */
function litresAt(classes: readonly LengthClass[], length: number): number | undefined {
  return classes.find(({ upTo }) => upTo === undefined || length <= upTo)?.litres;
}
