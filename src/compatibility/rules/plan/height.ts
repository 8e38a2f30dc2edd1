import { defineRule } from "../../rule";

/** Only deep bodies need more than a tank of common height has. */
export const height = defineRule({
  id: "height",
  question: "Is the tank high enough for its body?",
  way: "each-group",
  needs: { from: ["size.bodyShape", "space.height"] },
  mayYield: ["restricting"],
  judge: ({ from, plan }) => {
    if (from["size.bodyShape"] !== "short-deep") return [];
    const min = from["space.height"];
    const measures = {
      needed: { value: min, unit: "cm" },
      planned: { value: plan.nominal.height, unit: "cm" },
    };
    return [{ weight: "restricting", measures, condition: { on: "tank.height", within: { min } } }];
  },
});
