import { defineRule } from "../../rule";

export const plants = defineRule({
  id: "plants",
  question: "Does it need plants that have grown in?",
  way: "each-group",
  needs: { from: ["space.grownInPlants"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    if (!from["space.grownInPlants"]) return [];
    return [{ weight: "restricting", watchFor: "hiding", condition: { on: "tank.plants", is: "grown-in" } }];
  },
});
