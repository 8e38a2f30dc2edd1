import { ownRule } from "../../engine/rule/own-rule";
import { anyWater, judgePlannedWater, plannedWaterMeasures } from "../shared/water";

/**
 * Is the water as soft or hard as the group is kept?
 *
 * Goes by the water before sea salt is added. Restricts to what it can be given; water at the edge of that, or outside its
 * optimum, is worth knowing.
 */
export const waterHardness = /* @__PURE__ */ ownRule({
  id: "water-hardness",
  way: "each-group",
  needs: { from: ["water.generalHardness"] },
  reads: ["water.generalHardness"],
  decidesBy: ["givesHardness"],
  mayYield: ["restricting", "advisory"],
  measures: /* @__PURE__ */ plannedWaterMeasures("dH"),
  mayAsk: () => anyWater("water.generalHardness"),
  judge: ({ from, plan, thresholds }) =>
    judgePlannedWater(
      from["water.generalHardness"],
      { on: "water.generalHardness", figure: plan["water.generalHardness"] },
      { gives: thresholds.givesHardness },
    ),
});
