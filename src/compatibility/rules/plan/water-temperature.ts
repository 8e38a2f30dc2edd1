import type { PartialRange } from "../../../ranges";
import type { Figures } from "../../../species";
import { ownRule } from "../../engine/rule/own-rule";
import { anyWater, inSeason, judgePlannedWater, plannedWaterMeasures } from "../shared/water";

/**
 * Is the water as warm as the group is kept, on the hottest and coolest day too?
 *
 * The water as it usually is must be what the animals are kept in. A hot day is held to the upper end, a cool season to
 * the lower: to what they are said to stand for a while, else to what each end gives way, and never past a limit.
 */
export const waterTemperature = /* @__PURE__ */ ownRule({
  id: "water-temperature",
  way: "each-group",
  needs: { from: ["water.temperature"] },
  reads: ["water.temperature", "water.hottest", "water.coolest"],
  decidesBy: ["givesTemperature", "givesHotDay", "givesCoolSeason"],
  mayYield: ["restricting", "advisory"],
  measures: /* @__PURE__ */ plannedWaterMeasures("degC"),
  mayAsk: () => anyWater("water.temperature"),
  judge: ({ from, plan, thresholds }) => {
    const figures = from["water.temperature"];
    const { "water.temperature": usual, "water.hottest": hottest, "water.coolest": coolest } = plan;
    const { givesTemperature, givesHotDay, givesCoolSeason } = thresholds;
    return [
      ...judgePlannedWater(figures, { on: "water.temperature", figure: usual }, { gives: givesTemperature }),
      ...judgeSeason(figures, "max", { as: "hottest", figure: hottest }, givesHotDay),
      ...judgeSeason(figures, "min", { as: "coolest", figure: coolest }, givesCoolSeason),
    ];
  },
});

interface Season {
  readonly as: "hottest" | "coolest";
  readonly figure: number | undefined;
}

/** Judges a season by one end of what is kept. */
function judgeSeason(
  figures: Figures<PartialRange>,
  end: "min" | "max",
  { as, figure }: Season,
  gives: number,
) {
  const season = inSeason(figures, end, gives);
  if (figure === undefined || !season) return [];
  return judgePlannedWater(season.span, { on: `water.${as}`, as, figure }, season.giving);
}
