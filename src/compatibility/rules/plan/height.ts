import { grownLength } from "../../animals/lengths";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is the tank high enough for its body?
 *
 * Only long, deep bodies need more height than tanks commonly have.
 */
export const height = /* @__PURE__ */ ownRule({
  id: "height",
  way: "each-group",
  needs: { from: ["size.adultLength", "size.bodyShape", "space.height"] },
  reads: ["tank.height"],
  decidesBy: ["tallBody"],
  mayYield: ["restricting"],
  measures: { needed: "cm", planned: "cm" },
  judge: ({ from, plan, thresholds }) => {
    if (grownLength(from.party, from["size.adultLength"]) < thresholds.tallBody) return [];
    if (from["size.bodyShape"] !== "short-deep") return [];
    const needed = from["space.height"];
    const measures = { needed, planned: plan["tank.height"] };
    return [{ weight: "restricting", measures, condition: { on: "tank.height", wanted: { min: needed } } }];
  },
});
