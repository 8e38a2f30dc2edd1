import { decimal } from "../../../decimal";
import type { FactName } from "../../../plan";
import { gap, overlap, type PartialRange, width } from "../../../ranges";
import type { Figures } from "../../../species";
import type { Judged } from "../../engine/rule/finding";
import type { MeasureUnit } from "../../engine/rule/measures";

/** The measures of a finding about water that two share. */
export const sharedWaterMeasures = <const Unit extends MeasureUnit>(unit: Unit) => ({
  from: unit,
  to: unit,
  shared: unit,
  gap: unit,
});

type WaterAnswer = Judged<
  "blocking" | "restricting" | "favourable",
  ReturnType<typeof sharedWaterMeasures<MeasureUnit>>
>;
type Span = Figures<PartialRange>;

/** How far apart two kept spans may lie. */
interface Distances {
  /** A shared span at least this wide has room to spare. */
  readonly shared: number;
  /** Whether a gap this wide may be bridged by a compromise. */
  readonly bridged: (gap: number) => boolean;
}

/**
 * Two kept spans of a water figure: room to spare is favourable, a narrow share or a gap that may be bridged restricts
 * to that share or gap, a wider gap blocks. An optimum standing in for a kept span restricts at most, but water past
 * the other's limit always blocks.
 */
export function judgeSharedWater(
  a: Span,
  b: Span,
  on: FactName,
  { shared: roomy, bridged }: Distances,
): readonly WaterAnswer[] {
  const shared = overlap(a.kept, b.kept);
  if (shared && decimal(width(shared) ?? Number.POSITIVE_INFINITY) >= roomy) {
    return [{ weight: "favourable", measures: { shared } }];
  }
  const measures = { from: a.kept, to: b.kept };
  if (shared) {
    return [{ weight: "restricting", measures: { ...measures, shared }, condition: { on, wanted: shared } }];
  }
  const between = gap(a.kept, b.kept);
  if (!between) return [];
  const found = { measures: { ...measures, gap: between } };
  const pastLimit = excludes(a.limit, b.kept) || excludes(b.limit, a.kept);
  const standIn = a.standIn ?? b.standIn ?? false;
  if (pastLimit || !(standIn || bridged(decimal(between.max - between.min))))
    return [{ weight: "blocking", ...found }];
  return [{ weight: "restricting", condition: { on, wanted: between }, ...found }];
}

function excludes(limit: PartialRange | undefined, kept: PartialRange): boolean {
  return limit !== undefined && overlap(limit, kept) === undefined;
}
