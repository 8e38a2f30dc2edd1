import { defineRule } from "../../engine/rule/define-rule";

export const plantsAtRisk = defineRule({
  id: "plants-at-risk",
  question: "Does it leave the plants alone?",
  way: "each-group",
  needs: { from: ["effects.digs", "effects.uproots", "effects.eatsPlants"] },
  reads: ["tank.plants"],
  mayYield: ["restricting", "advisory"],
  measures: { harm: "plantHarm" },
  judge: ({ from, plan }) => {
    const eats = from["effects.eatsPlants"];
    const condition = { on: "tank.plants", wanted: { oneOf: ["none"] } } as const;
    if (eats || from["effects.uproots"]) {
      return [{ weight: "restricting", measures: { harm: eats ? "eats" : "uproots" }, condition }];
    }
    return from["effects.digs"] && plan["tank.plants"] !== "none"
      ? [{ weight: "advisory", measures: { harm: "digs" } }]
      : [];
  },
});
