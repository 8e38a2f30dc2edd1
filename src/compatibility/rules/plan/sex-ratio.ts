import { areSexed, mostFemalesPerMale } from "../../animals/females-per-male";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Are there enough females that no male wears one out?
 *
 * Where animals are sold unsexed it is told, and asked for only if there are too few of them, were they all female.
 */
export const sexRatio = /* @__PURE__ */ ownRule({
  id: "sex-ratio",
  way: "each-group",
  needs: { from: ["social.femalesPerMale"] },
  mayYield: ["restricting", "advisory"],
  measures: { needed: "count", planned: "count" },
  judge: ({ from }) => {
    const { kin } = from.party;
    const needed = from["social.femalesPerMale"];
    const { count = 1, mayHave } = kin;
    if (needed === 0 || count === 1 || !mayHave.male || !mayHave.female) return [];
    const most = mostFemalesPerMale(kin);
    if (most === undefined || (!areSexed(kin) && most >= needed))
      return [{ weight: "advisory", measures: { needed }, watchFor: "chasing" }];
    return [
      {
        weight: "restricting",
        measures: { needed, planned: areSexed(kin) ? most : { max: most } },
        watchFor: "chasing",
        condition: { on: "group.femalesPerMale", of: "from", wanted: { min: needed } },
      },
    ];
  },
});
