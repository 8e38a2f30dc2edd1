import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is there as much cover as it needs?
 *
 * Restricts to the cover that it needs.
 */
export const cover = /* @__PURE__ */ ownRule({
  id: "cover",
  way: "each-group",
  needs: { from: ["space.cover"] },
  mayYield: ["restricting"],
  measures: { needed: "1" },
  mayAsk: () => [{ on: "tank.cover", wanted: { min: 1 } }],
  judge: ({ from }) => {
    const needed = from["space.cover"];
    if (needed === 0) return [];
    const condition = { on: "tank.cover", wanted: { min: needed } } as const;
    return [{ weight: "restricting", measures: { needed }, watchFor: "hiding", condition }];
  },
});
