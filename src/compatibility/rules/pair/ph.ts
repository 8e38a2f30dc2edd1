import { defineRule } from "../../engine/rule/define-rule";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/shared-water";

export const ph = defineRule({
  id: "ph",
  question: "Is there a pH at which both are kept?",
  way: "mutual",
  needs: { from: ["water.pH"], to: ["water.pH"] },
  decidesBy: ["sharedPH", "bridgedPH"],
  mayYield: ["blocking", "restricting", "favourable"],
  measures: sharedWaterMeasures("pH"),
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(from["water.pH"], to["water.pH"], "water.pH", {
      shared: thresholds.sharedPH,
      bridged: (gap) => gap < thresholds.bridgedPH,
    }),
});
