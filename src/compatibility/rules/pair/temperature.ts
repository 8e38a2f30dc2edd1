import { ownRule } from "../../engine/rule/own-rule";
import { givingTemperature } from "../shared/givings";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/water";

/**
 * Is there a temperature at which both can be kept?
 *
 * Blocks where there is no temperature that both can be given, and where they meet at the ends alone of what they are kept
 * in, past what is best for either: an animal that lives there for good eats less, ages fast or falls ill. Restricts to
 * what both can be given where what they are kept in leaves little.
 */
export const temperature = /* @__PURE__ */ ownRule({
  id: "temperature",
  way: "mutual",
  needs: { from: ["water.temperature"], to: ["water.temperature"] },
  decidesBy: [
    "givesTemperature",
    "leastTemperature",
    "steadyTemperature",
    "endOfSeasons",
    "sharedTemperature",
  ],
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
