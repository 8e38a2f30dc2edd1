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
    const bridged = (distance: number) => distance <= thresholds.bridgedTemperature;
    const passing = () => true;
    return [
      ...judgePlannedWater(figures, temperature, "water.temperature", "degC", bridged),
      ...(hottest === undefined ? [] : judgePlannedWater(figures, hottest, "water.hottest", "degC", passing)),
      ...(coolest === undefined ? [] : judgePlannedWater(figures, coolest, "water.coolest", "degC", passing)),
    ];
  },
});
