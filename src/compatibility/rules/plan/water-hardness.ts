import { defineRule } from "../../rule";
import { judgePlannedWater } from "../shared/planned-water";

export const waterHardness = defineRule({
  id: "water-hardness",
  question: "Is the water as soft or hard as the group is kept?",
  way: "each-group",
  needs: { from: ["water.generalHardness"] },
  mayYield: ["blocking", "restricting"],
  judge: ({ from, plan }) =>
    judgePlannedWater(from["water.generalHardness"], {
      planned: plan.water.generalHardness,
      on: "water.generalHardness",
      unit: "dH",
    }),
});
