import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is enough of the tank free to swim in?
 *
 * Restricts to the share of the tank that it needs free to swim in.
 */
export const openWater = /* @__PURE__ */ ownRule({
  id: "open-water",
  way: "each-group",
  needs: { from: ["space.openWater"] },
  mayYield: ["restricting"],
  measures: { needed: "1" },
  mayAsk: () => [{ on: "tank.openWater", wanted: { min: 1 } }],
  judge: ({ from }) => {
    const needed = from["space.openWater"];
    if (needed === 0) return [];
    const condition = { on: "tank.openWater", wanted: { min: needed } } as const;
    return [{ weight: "restricting", measures: { needed }, condition }];
  },
});
