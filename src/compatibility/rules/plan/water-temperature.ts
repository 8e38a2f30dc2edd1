import type { Judged } from "../../finding";
import { defineRule } from "../../rule";
import { judgePlannedWater } from "../shared/planned-water";

export const waterTemperature = defineRule({
  id: "water-temperature",
  question: "Is the water as warm as the group is kept, on the hottest and coolest day too?",
  way: "each-group",
  needs: { from: ["water.temperature"] },
  decidesBy: ["bridgedTemperature"],
  mayYield: ["blocking", "restricting"],
  judge: ({ from, plan, thresholds }): readonly Judged<"blocking" | "restricting">[] => {
    const figures = from["water.temperature"];
    const { temperature, hottest, coolest } = plan.water;
    const { min, max } = figures.kept;
    return [
      ...judgePlannedWater(
        figures,
        { planned: temperature, on: "water.temperature", unit },
        (distance) => distance <= thresholds.bridgedTemperature,
      ),
      ...(hottest === undefined || max === undefined
        ? []
        : judgePlannedWater(
            { ...figures, kept: { max } },
            { planned: hottest, on: "water.hottest", unit, season: "hottest" },
          )),
      ...(coolest === undefined || min === undefined
        ? []
        : judgePlannedWater(
            { ...figures, kept: { min } },
            { planned: coolest, on: "water.coolest", unit, season: "coolest" },
          )),
    ];
  },
});

const unit = "degC";
