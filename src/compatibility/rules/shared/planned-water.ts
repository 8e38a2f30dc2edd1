import { decimal } from "../../../decimal";
import { contains, type PartialRange } from "../../../ranges";
import type { Figures } from "../../../species";
import type { Judged } from "../../finding";
import type { FactName } from "../../plan-facts";

/** A figure of the planned water. */
interface Planned {
  readonly planned: number;
  /** The fact of the plan that it is. */
  readonly on: FactName;
  readonly unit: string;
  /** When it is so, if not most of the time. */
  readonly season?: "hottest" | "coolest";
}

/**
 * A figure of the planned water against the span it is kept in: outside by a distance that may be bridged restricts,
 * farther blocks. Where an optimum stands in for the kept span it restricts at most; past a limit always blocks.
 * A hot day or a cool season passes, so every distance may be bridged.
 */
export function judgePlannedWater(
  { kept, limit, standIn }: Figures<PartialRange>,
  { planned, on, unit, season }: Planned,
  bridged: (distance: number) => boolean = () => true,
): readonly Judged<"blocking" | "restricting">[] {
  const measures = {
    kept: { ...kept, unit },
    planned: { value: planned, unit },
    ...(season && { season: { value: season } }),
  };
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
