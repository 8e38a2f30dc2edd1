import type { ThresholdValues } from "../../../compatibility";
import { inSeason, wantedOf } from "../../../compatibility/inner";
import type { PartialRange } from "../../../ranges";
import { type Figures, factAt, type SpeciesProfile } from "../../../species";
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
  /** By what it can be given, as `assessPlan` has it. */
  readonly given: Ends;
  /** By what it is kept in. */
  readonly kept: Ends;
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
  const given = endsOf(wantedOf(figures, giving(thresholds)), floor);
  const kept = endsOf(figures.kept, floor);
  const moves = axis === "salinity" ? 0 : (swing[axis] ?? 0);
  if (moves === 0) return { given, kept };
  if (axis !== "temperature") return { given: movedWithin(given, moves), kept: movedWithin(kept, moves) };
  const seasons = movedWithin(betweenSeasons(figures, thresholds), moves);
  return { given: sharedBy([given, seasons]), kept: sharedBy([kept, seasons]) };
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
