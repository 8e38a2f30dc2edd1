import { grounds } from "../../../species/inner";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is the ground one that it can dig in, sift or rest on unharmed?
 *
 * Restricts to the grounds that do not wear its barbels and in which it can dig, sift or spawn.
 */
export const ground = /* @__PURE__ */ ownRule({
  id: "ground",
  way: "each-group",
  needs: { from: ["space.substrate"] },
  mayYield: ["restricting"],
  measures: { needed: ["ground"] },
  mayAsk: () => grounds.map((ground) => ({ on: "tank.substrate", wanted: { oneOf: [ground] } })),
  judge: ({ from }) => {
    const needed = from["space.substrate"];
    if (needed.length === 0) return [];
    const condition = { on: "tank.substrate", wanted: { oneOf: needed } } as const;
    return [{ weight: "restricting", measures: { needed }, watchFor: "hiding", condition }];
  },
});
