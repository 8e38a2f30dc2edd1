import { defineRule } from "../../engine/rule/define-rule";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/water";

/** Salinity gives way by nothing: any share is room enough, and nothing bridges fresh and brackish water. */
export const salinity = defineRule({
  id: "salinity",
  question: "Is there a salinity at which both can be kept?",
  way: "mutual",
  needs: { from: ["water.salinity"], to: ["water.salinity"] },
  mayYield: ["blocking", "restricting", "advisory", "favourable"],
  measures: sharedWaterMeasures("g/kg"),
  judge: ({ from, to }) =>
    judgeSharedWater(from["water.salinity"], to["water.salinity"], "water.salinity", {
      gives: 0,
      least: 0,
      roomy: 0,
    }),
});
