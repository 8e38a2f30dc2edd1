import { defineRule } from "../../engine/rule/define-rule";
import { isNearlyEnough } from "../shared/nearly-enough";

/** Restricts to the share of the tank that it needs free to swim in; hardly less is worth knowing. */
export const openWater = /* @__PURE__ */ defineRule({
  id: "open-water",
  question: "Is enough of the tank free to swim in?",
  way: "each-group",
  needs: { from: ["space.openWater"] },
  reads: ["tank.openWater"],
  decidesBy: ["judgedByEye"],
  mayYield: ["restricting", "advisory"],
  measures: { needed: "1" },
  mayAsk: () => [{ on: "tank.openWater", wanted: { min: 1 } }],
  judge: ({ from, plan, thresholds }) => {
    const needed = from["space.openWater"];
    if (needed === 0) return [];
    if (isNearlyEnough(plan["tank.openWater"], needed, thresholds.judgedByEye))
      return [{ weight: "advisory", measures: { needed } }];
    const condition = { on: "tank.openWater", wanted: { min: needed } } as const;
    return [{ weight: "restricting", measures: { needed }, condition }];
  },
});
