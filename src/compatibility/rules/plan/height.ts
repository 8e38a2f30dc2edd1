import { decimal } from "../../../decimal";
import { standardLength } from "../../../species";
import { grownLength } from "../../animals/lengths";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is the tank high enough for its body?
 *
 * The water is no lower than a fish is long, unless it is as supple as an eel: deep bodies would stand out of it, and
 * nobody could turn up or down. Long, deep bodies need as much as is stated of them, more than tanks commonly have; where
 * a tank is lower than is stated of others, that is worth knowing. Where nobody says how high the tank is, it is asked for
 * the longer ones alone, for no tank is lower than small fish are long.
 */
export const height = /* @__PURE__ */ ownRule({
  id: "height",
  way: "each-group",
  needs: { from: ["size.adultLength"] },
  uses: { from: ["size.bodyShape", "space.height"] },
  reads: ["tank.height", "tank.heightWithoutWater"],
  decidesBy: ["tallBody", "waterDepth"],
  mayYield: ["restricting", "advisory"],
  measures: { needed: "cm", planned: "cm" },
  judge: ({ from, plan, thresholds }) => {
    const isFish = from.party.kind === "fish";
    const length = grownLength(from.party, from["size.adultLength"]);
    const shape = from["size.bodyShape"] ?? "short-deep";
    const isLong = isFish && length >= thresholds.tallBody;
    const depth = thresholds.waterDepth * standardLength(length).max;
    const least = isFish && shape !== "eel-like" ? decimal(depth + plan["tank.heightWithoutWater"]) : 0;
    const planned = plan["tank.height"];
    const isAsHigh = (needed: number) => planned !== undefined && planned >= needed;
    const asked = (needed: number) => {
      const condition = { on: "tank.height", wanted: { min: needed } } as const;
      return { weight: "restricting", measures: { needed, planned }, condition } as const;
    };
    if (isLong && shape === "short-deep") {
      const stated = from["space.height"];
      if (stated === undefined && isAsHigh(least)) return "unknown";
      return [asked(Math.max(stated ?? 0, least))];
    }
    const floor = least > 0 && (planned !== undefined || isLong) ? [asked(least)] : [];
    if (floor.length > 0 && !isAsHigh(least)) return floor;
    const stated = from["space.height"] ?? 0;
    return stated === 0 || isAsHigh(stated)
      ? floor
      : [...floor, { weight: "advisory", measures: { needed: stated, planned } }];
  },
});
