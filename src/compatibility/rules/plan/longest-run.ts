import { defineRule } from "../../rule";
import { cm } from "../shared/cm";

export const longestRun = defineRule({
  id: "longest-run",
  question: "Is the tank long enough for the group to swim?",
  way: "each-group",
  needs: { from: ["space.baseLength"] },
  mayYield: ["restricting"],
  judge: ({ from, plan }) => {
    const { least } = from["space.baseLength"];
    const measures = {
      needed: cm(least),
      planned: cm(plan.nominal.longestRun),
    };
    return [
      { weight: "restricting", measures, condition: { on: "tank.longestRun", within: { min: least } } },
    ];
  },
});
