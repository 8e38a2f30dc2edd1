import { decimal } from "../../../decimal";
import type { FactName } from "../../../plan";
import { contains, type PartialRange } from "../../../ranges";
import type { Figures } from "../../../species";
import type { Judged } from "../../engine/rule/finding";
import type { MeasureUnit } from "../../engine/rule/measures";

/** The measures of a finding about planned water; of a season the figure stands under its name. */
export const plannedWaterMeasures = <const Unit extends MeasureUnit>(unit: Unit) => ({
  kept: unit,
  planned: unit,
  hottest: unit,
  coolest: unit,
  limit: unit,
});

type WaterAnswer = Judged<"blocking" | "restricting", ReturnType<typeof plannedWaterMeasures<MeasureUnit>>>;

/** How a figure of the planned water is judged. */
interface Judging {
  /** The fact of the plan that it is. */
  readonly on: FactName;
  /** When it is so, if not most of the time. */
  readonly as?: "planned" | "hottest" | "coolest";
  /** Whether a distance to the kept span may be bridged; every one if absent. */
  readonly bridged?: (distance: number) => boolean;
}

/**
 * A figure of the planned water against the span it is kept in: outside by a distance that may be bridged restricts,
 * farther blocks. Where an optimum stands in for the kept span it restricts at most; past a limit always blocks.
 * A hot day or a cool season passes, so every distance may be bridged. A figure that is not given blocks nothing.
 */
export function judgePlannedWater(
  { kept, limit, standIn }: Figures<PartialRange>,
  planned: number | undefined,
  { on, as = "planned", bridged = () => true }: Judging,
): readonly WaterAnswer[] {
  const measures = { kept, [as]: planned };
  if (planned !== undefined && limit && !contains(limit, planned)) {
    return [{ weight: "blocking", measures: { ...measures, limit }, watchFor: "gasping" }];
  }
  if (planned !== undefined && !contains(kept, planned) && !standIn && !bridged(distance(kept, planned))) {
    return [{ weight: "blocking", measures }];
  }
  return [{ weight: "restricting", measures, condition: { on, wanted: kept } }];
}

/** How far a figure lies outside a span. */
function distance(
  { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }: PartialRange,
  figure: number,
) {
  return decimal(Math.max(min - figure, figure - max));
}
