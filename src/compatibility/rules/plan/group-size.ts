import { leastNumber } from "../../animals/least-number";
import { ownRule } from "../../engine/rule/own-rule";

/** More of its kind may be asked for, fewer never: what several of a solitary kind do to each other, their acts say. */
export const groupSize = /* @__PURE__ */ ownRule({
  id: "group-size",
  question: "Are there as many of it as belong together?",
  way: "each-group",
  needs: { from: ["social.living", "social.group"] },
  mayYield: ["restricting", "advisory"],
  measures: { needed: "count", planned: "count" },
  judge: ({ from }) => {
    const { count = 1 } = from.party.kin;
    if (from["social.living"] === "alone") {
      const measures = { needed: { max: 1 }, planned: count };
      return count > 1 ? [{ weight: "advisory", measures, watchFor: "chasing" }] : [];
    }
    const needed = { min: leastNumber(from["social.group"], count) };
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
