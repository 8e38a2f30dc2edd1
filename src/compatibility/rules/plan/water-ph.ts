import { ownRule } from "../../engine/rule/own-rule";
import { anyWater, judgePlannedWater, plannedWaterMeasures } from "../shared/water";

/**
 * Is the water as acid or alkaline as the group is kept?
 *
 * Restricts to what it can be given; water at the edge of that, or outside its optimum, is worth knowing.
 */
export const waterPh = /* @__PURE__ */ ownRule({
  id: "water-ph",
  way: "each-group",
  needs: { from: ["water.pH"] },
  reads: ["water.pH"],
  decidesBy: ["givesPH"],
  mayYield: ["restricting", "advisory"],
  measures: /* @__PURE__ */ plannedWaterMeasures("pH"),
  mayAsk: () => anyWater("water.pH"),
  judge: ({ from, plan, thresholds }) =>
    judgePlannedWater(
      from["water.pH"],
      { on: "water.pH", figure: plan["water.pH"] },
      { gives: thresholds.givesPH },
    ),
});
