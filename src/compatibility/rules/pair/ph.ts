import { ownRule } from "../../engine/rule/own-rule";
import { givingPH } from "../shared/givings";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/water";

/**
 * Is there a pH at which both can be kept?
 *
 * Blocks where what both can be given is narrower than can be held; restricts to it where what both are kept in leaves
 * little. Where both would have to give way to meet, nobody can tell.
 */
export const ph = /* @__PURE__ */ ownRule({
  id: "ph",
  way: "mutual",
  needs: { from: ["water.pH"], to: ["water.pH"] },
  decidesBy: ["givesPH", "leastPH", "sharedPH"],
  mayYield: ["blocking", "restricting", "advisory", "favourable"],
  measures: /* @__PURE__ */ sharedWaterMeasures("pH"),
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(from["water.pH"], to["water.pH"], "water.pH", givingPH(thresholds)),
});
