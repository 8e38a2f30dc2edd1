import { defineRule } from "../../engine/rule/define-rule";
import { judgePlannedWater, plannedWaterMeasures } from "../shared/planned-water";

/** A hot day is held to the upper end, a cool season to the lower. */
export const waterTemperature = defineRule({
  id: "water-temperature",
  question: "Is the water as warm as the group is kept, on the hottest and coolest day too?",
  way: "each-group",
  needs: { from: ["water.temperature"] },
  reads: ["water.temperature", "water.hottest", "water.coolest"],
  decidesBy: ["bridgedTemperature"],
  mayYield: ["blocking", "restricting"],
  measures: plannedWaterMeasures("degC"),
  judge: ({ from, plan, thresholds }) => {
    const figures = from["water.temperature"];
    const { min, max } = figures.kept;
    const { "water.hottest": hottest, "water.coolest": coolest } = plan;
    return [
      ...judgePlannedWater(figures, plan["water.temperature"], {
        on: "water.temperature",
        bridged: (distance) => distance <= thresholds.bridgedTemperature,
      }),
      ...(hottest === undefined || max === undefined
        ? []
        : judgePlannedWater({ ...figures, kept: { max } }, hottest, { on: "water.hottest", as: "hottest" })),
      ...(coolest === undefined || min === undefined
        ? []
        : judgePlannedWater({ ...figures, kept: { min } }, coolest, { on: "water.coolest", as: "coolest" })),
    ];
  },
});
