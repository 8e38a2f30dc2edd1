import { decimal } from "../../../decimal";
import { standardLength } from "../../../species";
import { grownLength } from "../../animals/lengths";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is the tank high enough for its body?
 *
 * The water is no lower than a fish is long: deep bodies would stand out of it, and nobody could turn up or down. Those as
 * supple as an eel, and animals that are no fish, need a part of their length. Long, deep bodies need as much as is stated
 * of them, more than tanks commonly have; where a tank is lower than is stated of others, that is worth knowing. Where
 * nobody says how high the tank is, it is asked for the longer ones alone, for no tank is lower than small fish are long.
 */
export const height = /* @__PURE__ */ ownRule({
  id: "height",
  way: "each-group",
  needs: { from: ["size.adultLength"] },
  uses: { from: ["size.bodyShape", "space.height"] },
  reads: ["tank.height", "tank.heightWithoutWater"],
  decidesBy: ["tallBody", "waterDepth", "bendingRoom"],
  mayYield: ["restricting", "advisory"],
  measures: { needed: "cm", planned: "cm" },
  judge: ({ from, plan, thresholds }) => {
    const isFish = from.party.kind === "fish";
    const shape = from["size.bodyShape"] ?? "short-deep";
    const length = grownLength(from.party, from["size.adultLength"]);
    const isLong = isFish && length >= thresholds.tallBody;
    const isTall = isLong && shape === "short-deep";
    const planned = plan["tank.height"];
    const isLow = (needed: number) => planned === undefined || planned < needed;
    const asked = (needed: number) => {
      const condition = { on: "tank.height", wanted: { min: needed } } as const;
      return { weight: "restricting", measures: { needed, planned }, condition } as const;
    };
    const isStiff = isFish && shape !== "eel-like";
    const isAsked = (isStiff && isLong) || planned !== undefined;
    const depth = isStiff
      ? thresholds.waterDepth * standardLength(length).max
      : thresholds.bendingRoom * length;
    const least = isAsked ? decimal(depth + plan["tank.heightWithoutWater"]) : 0;
    if (isTall) {
      const stated = from["space.height"];
      return stated === undefined && !isLow(least) ? "unknown" : [asked(Math.max(stated ?? 0, least))];
    }
    if (isAsked && isLow(least)) return [asked(least)];
    const stated = from["space.height"] ?? 0;
    const told = { weight: "advisory", measures: { needed: stated, planned } } as const;
    return [...(isAsked ? [asked(least)] : []), ...(stated > 0 && isLow(stated) ? [told] : [])];
  },
});
