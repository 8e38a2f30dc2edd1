import { ownRule } from "../../engine/rule/own-rule";

/**
 * Does it leave the plants alone?
 *
 * A loss of plants harms no animal; where another cannot do without them, `furnishing` says so.
 */
export const plantsAtRisk = /* @__PURE__ */ ownRule({
  id: "plants-at-risk",
  way: "each-group",
  needs: { from: ["effects.digs", "effects.uproots", "effects.eatsPlants"] },
  reads: ["tank.plants"],
  mayYield: ["advisory"],
  measures: { harm: "plantHarm" },
  judge: ({ from, plan }) => {
    if (plan["tank.plants"] === "none") return [];
    if (from["effects.eatsPlants"]) return [{ weight: "advisory", measures: { harm: "eats" } }];
    if (from["effects.uproots"]) return [{ weight: "advisory", measures: { harm: "uproots" } }];
    return from["effects.digs"] ? [{ weight: "advisory", measures: { harm: "digs" } }] : [];
  },
});
