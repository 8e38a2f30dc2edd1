import { defineRule } from "../../engine/rule/define-rule";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/shared-water";

export const temperature = defineRule({
  id: "temperature",
  question: "Is there a temperature at which both are kept?",
  way: "mutual",
  needs: { from: ["water.temperature"], to: ["water.temperature"] },
  decidesBy: ["sharedTemperature", "bridgedTemperature"],
  mayYield: ["blocking", "restricting", "favourable"],
  measures: sharedWaterMeasures("degC"),
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(from["water.temperature"], to["water.temperature"], "water.temperature", {
      shared: thresholds.sharedTemperature,
      bridged: (gap) => gap <= thresholds.bridgedTemperature,
    }),
});
