import { decimal } from "../../../decimal";
import { defineRule } from "../../engine/rule/define-rule";

/**
 * Dense cover settles it too, more slowly. Who eats fish is settled by none of another kind: it hides, and more cover than
 * it needs anyway is a help and no need.
 */
export const settlingCompany = defineRule({
  id: "settling-company",
  question: "Does calm company in the open water bring it out of hiding?",
  way: "each-group",
  needs: { from: ["social.settledBy"] },
  uses: { from: ["space.cover", "social.settles", "predation.eats"] },
  reads: ["tank.cover"],
  decidesBy: ["coverInsteadOfCompany"],
  mayYield: ["restricting", "advisory"],
  measures: { cover: "1" },
  judge: ({ from, plan, thresholds }) => {
    if (!from["social.settledBy"]) return [];
    const needed = from["space.cover"];
    const cover = needed ? decimal(needed * thresholds.coverInsteadOfCompany) : 1;
    const isDense = plan["tank.cover"] !== undefined && plan["tank.cover"] >= cover;
    const eatsFish = from["predation.eats"]?.some(({ prey }) => prey === "fish");
    if (isDense || (eatsFish && !from["social.settles"]))
      return [{ weight: "advisory", measures: { cover }, watchFor: "hiding" }];
    const condition = { on: "group.company", of: "from", wanted: { oneOf: [true] } } as const;
    return [{ weight: "restricting", measures: { cover }, watchFor: "hiding", condition }];
  },
});
