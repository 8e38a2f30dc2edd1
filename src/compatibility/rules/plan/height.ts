import { defineRule } from "../../rule";
import { cm } from "../shared/cm";
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
      needed: cm(min),
      planned: cm(plan.nominal.height),
    };
    return [{ weight: "restricting", measures, condition: { on: "tank.height", within: { min } } }];
  },
});
