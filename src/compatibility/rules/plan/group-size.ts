import { leastNumber } from "../../animals/least-number";
import { defineRule } from "../../engine/rule/define-rule";

export const groupSize = defineRule({
  id: "group-size",
  question: "Are there as many of it as belong together?",
  way: "each-group",
  needs: { from: ["social.living", "social.group"] },
  mayYield: ["restricting"],
  measures: { needed: "count", planned: "count" },
  judge: ({ from }) => {
    const { count = 1 } = from.party.kin;
    const needed =
      from["social.living"] === "alone" ? { max: 1 } : { min: leastNumber(from["social.group"], count) };
    return [
      {
        weight: "restricting",
        measures: { needed, planned: count },
        watchFor: "hiding",
        condition: { on: "group.count", of: "from", wanted: needed },
      },
    ];
  },
});
