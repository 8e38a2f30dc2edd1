import { ownRule } from "../../engine/rule/own-rule";
import { givingTemperature } from "../shared/givings";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/water";

/** Blocks where what both can be given is narrower than can be held; restricts to it where what both are kept in leaves little. */
export const temperature = /* @__PURE__ */ ownRule({
  id: "temperature",
  question: "Is there a temperature at which both can be kept?",
  way: "mutual",
  needs: { from: ["water.temperature"], to: ["water.temperature"] },
  decidesBy: ["givesTemperature", "leastTemperature", "sharedTemperature"],
  mayYield: ["blocking", "restricting", "advisory", "favourable"],
  measures: /* @__PURE__ */ sharedWaterMeasures("degC"),
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(
      from["water.temperature"],
      to["water.temperature"],
      "water.temperature",
      givingTemperature(thresholds),
    ),
});
