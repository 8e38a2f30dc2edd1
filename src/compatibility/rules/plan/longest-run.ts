import { defineRule } from "../../rule";

export const longestRun = defineRule({
  id: "longest-run",
  question: "Is the tank long enough for the group to swim?",
  way: "each-group",
  needs: { from: ["space.baseLength"] },
  mayYield: ["restricting"],
  judge: ({ from, plan }) => {
    const { least } = from["space.baseLength"];
    const measures = {
      needed: { value: least, unit: "cm" },
      planned: { value: plan.nominal.longestRun, unit: "cm" },
    };
    return [
      { weight: "restricting", measures, condition: { on: "tank.longestRun", within: { min: least } } },
    ];
  },
});
