import { leastNumber } from "../../animals/least-number";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * More of a kind than belong together by its way of living. Fewer of those that a plan names are never asked for: what so
 * many do to each other their acts say. Of loners, and of a number that is to be passed, `group-size` tells.
 */
export const largestGroup = /* @__PURE__ */ ownRule({
  id: "largest-group",
  question: "Are there no more of it than belong together?",
  way: "each-group",
  uses: { from: ["social.largestGroup", "social.living", "social.group"] },
  mayYield: ["advisory"],
  measures: { most: "count", planned: "count" },
  judge: ({ from }) => {
    const { "social.largestGroup": most, "social.living": living, "social.group": group, party } = from;
    const { count = 1 } = party.kin;
    if (most === undefined || count <= most || living === "alone") return [];
    if (group && leastNumber(group, count) > count) return [];
    return [{ weight: "advisory", measures: { most, planned: count }, watchFor: "chasing" }];
  },
});
