import { defineRule } from "../../rule";
import { judgePlannedWater } from "../shared/planned-water";

export const waterSalinity = defineRule({
  id: "water-salinity",
  question: "Is the water as salt or fresh as the group is kept?",
  way: "each-group",
  needs: { from: ["water.salinity"] },
  mayYield: ["blocking", "restricting"],
  judge: ({ from, plan }) =>
    judgePlannedWater(
      from["water.salinity"],
      { planned: plan.water.salinity, on: "water.salinity", unit: "g/kg" },
      () => false,
    ),
});
