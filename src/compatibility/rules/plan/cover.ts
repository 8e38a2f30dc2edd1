import { defineRule } from "../../rule";

export const cover = defineRule({
  id: "cover",
  question: "Is there as much cover as it needs?",
  way: "each-group",
  needs: { from: ["space.cover"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const min = from["space.cover"];
    if (min === 0) return [];
    const measures = { needed: { value: min, unit: "1" } };
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "hiding",
        condition: { on: "tank.cover", within: { min } },
      },
    ];
  },
});
