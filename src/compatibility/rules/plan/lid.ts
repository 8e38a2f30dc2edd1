import { ownRule } from "../../engine/rule/own-rule";

/**
 * Does it leave the water where the tank is open?
 *
 * Restricts to a covered tank for what jumps or climbs without any cause; what only leaps when startled is worth knowing.
 */
export const lid = /* @__PURE__ */ ownRule({
  id: "lid",
  way: "each-group",
  needs: { from: ["space.jumps"] },
  reads: ["tank.lid"],
  mayYield: ["restricting", "advisory"],
  judge: ({ from, plan }) => {
    const jumps = from["space.jumps"];
    const condition = { on: "tank.lid", wanted: { oneOf: [true] } } as const;
    if (jumps === "readily") return [{ weight: "restricting", watchFor: "missing-animals", condition }];
    return jumps === "startled" && !plan["tank.lid"]
      ? [{ weight: "advisory", watchFor: "missing-animals" }]
      : [];
  },
});
