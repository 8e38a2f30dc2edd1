import { ownRule } from "../../engine/rule/own-rule";
import { givingHardness } from "../shared/givings";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/water";

/**
 * Is there a hardness at which both can be kept?
 *
 * Blocks where what both can be given is narrower than can be held; restricts to it where what both are kept in leaves
 * little. Where both would have to give way to meet, nobody can tell.
 */
export const generalHardness = /* @__PURE__ */ ownRule({
  id: "general-hardness",
  way: "mutual",
  needs: { from: ["water.generalHardness"], to: ["water.generalHardness"] },
  decidesBy: ["givesHardness", "leastHardness", "sharedHardness"],
  mayYield: ["blocking", "restricting", "advisory", "favourable"],
  measures: /* @__PURE__ */ sharedWaterMeasures("dH"),
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(
      from["water.generalHardness"],
      to["water.generalHardness"],
      "water.generalHardness",
      givingHardness(thresholds),
    ),
});
