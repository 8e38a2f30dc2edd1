import { runNeeded } from "../../animals/room";
import { defineRule } from "../../engine/rule/define-rule";

export const longestRun = defineRule({
  id: "longest-run",
  question: "Is the tank long enough for the group to swim?",
  way: "each-group",
  needs: { from: ["space.baseLength"] },
  reads: ["tank.longestRun"],
  mayYield: ["restricting"],
  measures: { needed: "cm", planned: "cm" },
  judge: ({ from, plan }) => {
    const needed = runNeeded(from["space.baseLength"], from.party.kin.count);
    const measures = { needed, planned: plan["tank.longestRun"] };
    return [
      { weight: "restricting", measures, condition: { on: "tank.longestRun", wanted: { min: needed } } },
    ];
  },
});
