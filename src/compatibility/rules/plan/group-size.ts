import { defineRule } from "../../rule";
import { leastNumber } from "../shared/least-number";

export const groupSize = defineRule({
  id: "group-size",
  question: "Are there as many of it as belong together?",
  way: "each-group",
  needs: { from: ["social.living", "social.group"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const { count = 1 } = from.party.kin;
    const within =
      from["social.living"] === "alone" ? { max: 1 } : { min: leastNumber(from["social.group"], count) };
    const measures = { needed: within, planned: { value: count } };
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "hiding",
        condition: { on: "group.count", of: "from", within },
      },
    ];
  },
});
