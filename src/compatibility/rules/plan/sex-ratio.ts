import { defineRule } from "../../engine/rule/define-rule";

export const sexRatio = defineRule({
  id: "sex-ratio",
  question: "Are there enough females that no male wears one out?",
  way: "each-group",
  needs: { from: ["social.femalesPerMale"] },
  mayYield: ["restricting"],
  measures: { needed: "count", planned: "count" },
  judge: ({ from }) => {
    const { count = 1, males, females } = from.party.kin;
    const needed = from["social.femalesPerMale"];
    if (needed === 0 || count === 1 || males === 0 || females === 0) return [];
    const planned = males && females ? females / males : undefined;
    return [
      {
        weight: "restricting",
        measures: { needed, planned },
        watchFor: "chasing",
        condition: { on: "group.femalesPerMale", of: "from", wanted: { min: needed } },
      },
    ];
  },
});
