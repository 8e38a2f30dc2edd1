import { ownRule } from "../../engine/rule/own-rule";

/**
 * Does it need plants that have grown in?
 *
 * Restricts to plants that have grown in, for what stays pale, hides or starves without them.
 */
export const plants = /* @__PURE__ */ ownRule({
  id: "plants",
  way: "each-group",
  needs: { from: ["space.grownInPlants"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    if (!from["space.grownInPlants"]) return [];
    const condition = { on: "tank.plants", wanted: { oneOf: ["grown-in"] } } as const;
    return [{ weight: "restricting", watchFor: "hiding", condition }];
  },
});
