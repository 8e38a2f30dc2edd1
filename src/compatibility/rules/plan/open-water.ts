import { defineRule } from "../../rule";

export const openWater = defineRule({
  id: "open-water",
  question: "Is enough of the tank free to swim in?",
  way: "each-group",
  needs: { from: ["space.openWater"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const min = from["space.openWater"];
    if (min === 0) return [];
    return [
      {
        weight: "restricting",
        measures: { needed: { value: min, unit: "1" } },
        condition: { on: "tank.openWater", within: { min } },
      },
    ];
  },
});
