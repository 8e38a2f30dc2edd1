import { defineRule } from "../../rule";
import { judgeSharedWater } from "../shared/shared-water";

export const temperature = defineRule({
  id: "temperature",
  question: "Is there a temperature at which both are kept?",
  way: "mutual",
  needs: { from: ["water.temperature"], to: ["water.temperature"] },
  decidesBy: ["sharedTemperature", "bridgedTemperature"],
  mayYield: ["blocking", "restricting", "favourable"],
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(from["water.temperature"], to["water.temperature"], "water.temperature", "degC", {
      shared: thresholds.sharedTemperature,
      bridged: (gap) => gap <= thresholds.bridgedTemperature,
    }),
});
