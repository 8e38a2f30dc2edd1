import { ownRule } from "../../engine/rule/own-rule";

/**
 * Are there enough females that no male wears one out?
 *
 * Animals sold unsexed are told, not asked for.
 */
export const sexRatio = /* @__PURE__ */ ownRule({
  id: "sex-ratio",
  way: "each-group",
  needs: { from: ["social.femalesPerMale"] },
  mayYield: ["restricting", "advisory"],
  measures: { needed: "count", planned: "count" },
  judge: ({ from }) => {
    const { count = 1, males, females } = from.party.kin;
    const needed = from["social.femalesPerMale"];
    if (needed === 0 || count === 1 || males === 0 || females === 0) return [];
    if (males === undefined || females === undefined)
      return [{ weight: "advisory", measures: { needed }, watchFor: "chasing" }];
    return [
      {
        weight: "restricting",
        measures: { needed, planned: females / males },
        watchFor: "chasing",
        condition: { on: "group.femalesPerMale", of: "from", wanted: { min: needed } },
      },
    ];
  },
});
