import { ownRule } from "../../engine/rule/own-rule";
import { anyWater, judgePlannedWater, plannedWaterMeasures } from "../shared/water";

/**
 * Is the water as salt or fresh as the group is kept?
 *
 * Water of which no salinity is stated counts as fresh, but the figure is asked for.
 */
export const waterSalinity = /* @__PURE__ */ ownRule({
  id: "water-salinity",
  way: "each-group",
  needs: { from: ["water.salinity"] },
  reads: ["water.statedSalinity"],
  mayYield: ["restricting", "advisory"],
  measures: /* @__PURE__ */ plannedWaterMeasures("g/kg"),
  mayAsk: () => anyWater("water.salinity"),
  judge: ({ from, plan }) =>
    judgePlannedWater(
      from["water.salinity"],
      { on: "water.salinity", figure: plan["water.statedSalinity"] },
      { gives: 0 },
    ),
});
