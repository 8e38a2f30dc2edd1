import { defineRule } from "../../engine/rule/define-rule";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/shared-water";

/** Any share is room enough; where nothing is shared, nothing bridges fresh and brackish water. */
export const salinity = defineRule({
  id: "salinity",
  question: "Is there a salinity at which both are kept?",
  way: "mutual",
  needs: { from: ["water.salinity"], to: ["water.salinity"] },
  mayYield: ["blocking", "restricting", "favourable"],
  measures: sharedWaterMeasures("g/kg"),
  judge: ({ from, to }) =>
    judgeSharedWater(from["water.salinity"], to["water.salinity"], "water.salinity", {
      shared: 0,
      bridged: () => false,
    }),
});
