import { defineRule } from "../../engine/rule/define-rule";
import { judgePlannedWater, plannedWaterMeasures } from "../shared/planned-water";

export const waterPh = defineRule({
  id: "water-ph",
  question: "Is the water as acid or alkaline as the group is kept?",
  way: "each-group",
  needs: { from: ["water.pH"] },
  reads: ["water.pH"],
  decidesBy: ["bridgedPH"],
  mayYield: ["blocking", "restricting"],
  measures: plannedWaterMeasures("pH"),
  judge: ({ from, plan, thresholds }) =>
    judgePlannedWater(from["water.pH"], plan["water.pH"], {
      on: "water.pH",
      bridged: (distance) => distance < thresholds.bridgedPH,
    }),
});
