import type { PartialRange } from "../../ranges";
import { type Figures, factAt, type SpeciesProfile } from "../../species";
import { inSeason, surelyOf, wantedOf } from "../rules/shared/water";
import type { ThresholdValues } from "../threshold-values";
import { axes, type WaterAxis } from "./axes";
import { type Ends, endsOf, movedWithin, sharedBy } from "./ends";

/** How far water moves either way from what it usually is: K, pH and °dH. */
export interface Swing {
  /** K: on the hottest day above, in the coolest season below. */
  readonly temperature?: number | undefined;
  /** Units of pH. */
  readonly pH?: number | undefined;
  /** °dH. */
  readonly generalHardness?: number | undefined;
}

/** What the usual water may be for one animal. */
export interface KeptWater {
  /** As its record has it. */
  readonly figures: Figures<PartialRange>;
  /** By what it can be given, as `assessPlan` has it. */
  readonly given: Ends;
  /** By what it can be given were every end of it the animal's own, and none that of a handbook's class. */
  readonly surely: Ends;
  /** By what it is kept in. */
  readonly kept: Ends;
  /**
   * By what is best for it of what it is kept in; where nobody says what is, by all of that. Crossed where they share
   * nothing.
   */
  readonly best: Ends;
  /** Whether its optimum stands in for what nobody states that it is kept in. */
  readonly standsIn: boolean;
}

/** By what water is judged. */
export interface WaterTerms {
  readonly thresholds: ThresholdValues;
  readonly swing: Swing;
}

/** What the usual water may be for an animal; undefined where nobody says what it is kept in. */
export function keptWater(
  profile: SpeciesProfile,
  axis: WaterAxis,
  { thresholds, swing }: WaterTerms,
): KeptWater | undefined {
  const figures = factAt(profile, `water.${axis}`)?.value;
  if (!figures) return undefined;
  const { giving, floor } = axes[axis];
  const gives = giving(thresholds);
  const inSwing = (span: PartialRange) =>
    withSwing(endsOf(span, floor), axis, figures, { thresholds, swing });
  const kept = inSwing(figures.kept);
  return {
    figures,
    given: inSwing(wantedOf(figures, gives)),
    surely: inSwing(surelyOf(figures, gives)),
    kept,
    best: sharedBy([endsOf(figures.optimum ?? {}, -Infinity), kept]),
    standsIn: figures.standIn ?? false,
  };
}

/** What is left of a span for usual water that moves either way. */
function withSwing(
  span: Ends,
  axis: WaterAxis,
  figures: Figures<PartialRange>,
  { thresholds, swing }: WaterTerms,
): Ends {
  const moves = axis === "salinity" ? 0 : (swing[axis] ?? 0);
  if (moves === 0) return span;
  if (axis !== "temperature") return movedWithin(span, moves);
  return sharedBy([span, movedWithin(betweenSeasons(figures, thresholds), moves)]);
}

/** From the coolest that an animal can be given for a season to the hottest for a day. */
function betweenSeasons(
  figures: Figures<PartialRange>,
  { givesCoolSeason, givesHotDay }: ThresholdValues,
): Ends {
  const cool = inSeason(figures, "min", givesCoolSeason);
  const hot = inSeason(figures, "max", givesHotDay);
  const open = Number.POSITIVE_INFINITY;
  return sharedBy([
    endsOf(cool ? wantedOf(cool.span, cool.giving) : {}, -open),
    endsOf(hot ? wantedOf(hot.span, hot.giving) : {}, -open),
  ]);
}
