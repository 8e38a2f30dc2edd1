import { defineRule } from "../../engine/rule/define-rule";
import { anyWater, judgePlannedWater, plannedWaterMeasures } from "../shared/water";

/** A hot day is held to the upper end, a cool season to the lower. */
export const waterTemperature = /* @__PURE__ */ defineRule({
  id: "water-temperature",
  question: "Is the water as warm as the group is kept, on the hottest and coolest day too?",
  way: "each-group",
  needs: { from: ["water.temperature"] },
  reads: ["water.temperature", "water.hottest", "water.coolest"],
  decidesBy: ["givesTemperature"],
  mayYield: ["restricting", "advisory"],
  measures: /* @__PURE__ */ plannedWaterMeasures("degC"),
  mayAsk: () => anyWater("water.temperature"),
  judge: ({ from, plan, thresholds }) => {
    const figures = from["water.temperature"];
    const giving = { gives: thresholds.givesTemperature };
    const { min, max } = figures.kept;
    const { "water.hottest": hottest, "water.coolest": coolest } = plan;
    return [
      ...judgePlannedWater(figures, { on: "water.temperature", figure: plan["water.temperature"] }, giving),
      ...(hottest === undefined || max === undefined
        ? []
        : judgePlannedWater(
            { ...figures, kept: { max } },
            { on: "water.hottest", as: "hottest", figure: hottest },
            giving,
          )),
      ...(coolest === undefined || min === undefined
        ? []
        : judgePlannedWater(
            { ...figures, kept: { min } },
            { on: "water.coolest", as: "coolest", figure: coolest },
            giving,
          )),
    ];
  },
});
