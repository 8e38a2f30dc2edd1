import { leastNumber } from "../../animals/least-number";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Are there as many of it as belong together?
 *
 * More of its kind may be asked for, fewer never: what several of a solitary kind do to each other, their acts say. Where
 * one will do nothing is asked. Of a number to be avoided it tells how many fewer would do too, of another how many belong
 * together at most.
 */
export const groupSize = /* @__PURE__ */ ownRule({
  id: "group-size",
  way: "each-group",
  needs: { from: ["social.living", "social.group"] },
  tells: { from: ["social.largestGroup"] },
  mayYield: ["restricting", "advisory"],
  measures: { needed: "count", planned: "count", fewer: "count" },
  judge: ({ from }) => {
    const { "social.living": living, "social.group": group, "social.largestGroup": largest, party } = from;
    const { count: planned = 1 } = party.kin;
    const isAlone = living === "alone";
    const most = isAlone ? 1 : (largest ?? planned);
    const min = leastNumber(group, planned);
    const isMany = planned > most && (isAlone || min <= planned);
    const many = {
      weight: "advisory",
      measures: { needed: { max: most }, planned },
      watchFor: "chasing",
    } as const;
    if (isAlone || min === 1) return isMany ? [many] : [];
    const { least, avoid } = group;
    const fewer = avoid && min > avoid.max && least < avoid.min ? avoid.min - 1 : undefined;
    return [
      {
        weight: "restricting",
        measures: { needed: { min }, planned, fewer },
        watchFor: "hiding",
        condition: { on: "group.count", of: "from", wanted: { min } },
      },
      ...(isMany ? [many] : []),
    ];
  },
});
