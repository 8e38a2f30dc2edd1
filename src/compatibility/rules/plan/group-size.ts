import { leastNumber } from "../../animals/least-number";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * More of its kind may be asked for, fewer never: what several of a solitary kind do to each other, their acts say. Of a
 * number to be avoided it tells how many fewer would do too.
 */
export const groupSize = /* @__PURE__ */ ownRule({
  id: "group-size",
  question: "Are there as many of it as belong together?",
  way: "each-group",
  needs: { from: ["social.living", "social.group"] },
  mayYield: ["restricting", "advisory"],
  measures: { needed: "count", planned: "count", fewer: "count" },
  judge: ({ from }) => {
    const { count = 1 } = from.party.kin;
    if (from["social.living"] === "alone") {
      const measures = { needed: { max: 1 }, planned: count };
      return count > 1 ? [{ weight: "advisory", measures, watchFor: "chasing" }] : [];
    }
    const { least, avoid } = from["social.group"];
    const needed = { min: leastNumber(from["social.group"], count) };
    const fewer = avoid && needed.min > avoid.max && least < avoid.min ? avoid.min - 1 : undefined;
    return [
      {
        weight: "restricting",
        measures: { needed, planned: count, fewer },
        watchFor: "hiding",
        condition: { on: "group.count", of: "from", wanted: needed },
      },
    ];
  },
});
