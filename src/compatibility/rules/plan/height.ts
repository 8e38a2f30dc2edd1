import { defineRule } from "../../rule";
import { roomLength } from "../shared/total-length";

/** Only long, deep bodies need more height than tanks commonly have. */
export const height = defineRule({
  id: "height",
  question: "Is the tank high enough for its body?",
  way: "each-group",
  needs: { from: ["size.adultLength", "size.bodyShape", "space.height"] },
  decidesBy: ["tallBody"],
  mayYield: ["restricting"],
  judge: ({ from, plan, thresholds }) => {
    if (roomLength(from.party, from["size.adultLength"]) < thresholds.tallBody) return [];
    if (from["size.bodyShape"] !== "short-deep") return [];
    const min = from["space.height"];
    const measures = {
      needed: { value: min, unit: "cm" },
      planned: { value: plan.nominal.height, unit: "cm" },
    };
    return [{ weight: "restricting", measures, condition: { on: "tank.height", within: { min } } }];
  },
});
