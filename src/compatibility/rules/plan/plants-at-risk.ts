import { defineRule } from "../../rule";

export const plantsAtRisk = defineRule({
  id: "plants-at-risk",
  question: "Does it leave the plants alone?",
  way: "each-group",
  needs: { from: ["effects.digs", "effects.uproots", "effects.eatsPlants"] },
  mayYield: ["restricting", "advisory"],
  judge: ({ from, plan }) => {
    const eats = from["effects.eatsPlants"];
    const condition = { on: "tank.plants", is: "none" } as const;
    if (eats || from["effects.uproots"]) {
      return [{ weight: "restricting", measures: { does: { value: eats ? "eats" : "uproots" } }, condition }];
    }
    return from["effects.digs"] && plan.tank.plants !== "none"
      ? [{ weight: "advisory", measures: { does: { value: "digs" } } }]
      : [];
  },
});
