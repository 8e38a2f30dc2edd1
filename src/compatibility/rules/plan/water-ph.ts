import { defineRule } from "../../rule";
import { judgePlannedWater } from "../shared/planned-water";

export const waterPh = defineRule({
  id: "water-ph",
  question: "Is the water as acid or alkaline as the group is kept?",
  way: "each-group",
  needs: { from: ["water.pH"] },
  decidesBy: ["bridgedPH"],
  mayYield: ["blocking", "restricting"],
  judge: ({ from, plan, thresholds }) =>
    judgePlannedWater(
      from["water.pH"],
      { planned: plan.water.pH, on: "water.pH", unit: "" },
      (distance) => distance < thresholds.bridgedPH,
    ),
});
