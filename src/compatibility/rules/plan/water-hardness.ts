import { defineRule } from "../../engine/rule/define-rule";
import { judgePlannedWater, plannedWaterMeasures } from "../shared/planned-water";

export const waterHardness = defineRule({
  id: "water-hardness",
  question: "Is the water as soft or hard as the group is kept?",
  way: "each-group",
  needs: { from: ["water.generalHardness"] },
  reads: ["water.generalHardness"],
  mayYield: ["blocking", "restricting"],
  measures: plannedWaterMeasures("dH"),
  judge: ({ from, plan }) =>
    judgePlannedWater(from["water.generalHardness"], plan["water.generalHardness"], {
      on: "water.generalHardness",
    }),
});
