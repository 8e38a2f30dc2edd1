import { contains, type PartialRange } from "../../../ranges";
import type { Figures } from "../../../species";
import type { Judged } from "../../finding";
import type { FactName } from "../../plan-facts";
import { decimal } from "./decimal";

/**
 * A figure of the planned water against the span it is kept in: outside by a distance that may be bridged restricts,
 * farther blocks. Where an optimum stands in for the kept span it restricts at most; past a limit always blocks.
 */
export function judgePlannedWater(
  figures: Figures<PartialRange>,
  planned: number,
  on: FactName,
  unit: string,
  bridged: (distance: number) => boolean,
): readonly Judged<"blocking" | "restricting">[] {
  const { kept, limit, standIn } = figures;
  const measures = { kept: { ...kept, unit }, planned: { value: planned, unit } };
  if (limit && !contains(limit, planned)) {
    return [
      { weight: "blocking", measures: { ...measures, limit: { ...limit, unit } }, watchFor: "gasping" },
    ];
  }
  if (!contains(kept, planned) && !standIn && !bridged(distance(kept, planned))) {
    return [{ weight: "blocking", measures }];
  }
  return [{ weight: "restricting", measures, condition: { on, within: kept } }];
}

/** How far a figure lies outside a span. */
function distance(
  { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }: PartialRange,
  figure: number,
) {
  return decimal(Math.max(min - figure, figure - max));
}
