import { decimal } from "../../../decimal";
import { grownLength, preyLength } from "../../animals/lengths";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { coverBeside } from "../shared/cover-beside";
import { shareAny } from "../shared/lists";

/**
 * Does the other's bustle keep it in hiding?
 *
 * Restless: first at the food, and not of those that swim calmly. Who is as quick itself is not kept from anything. Who is
 * much smaller frightens nobody: small fish that swim about in the open rather tell larger ones that no danger is near
 * (Barlow 1968, from memory).
 */
export const shyness = /* @__PURE__ */ ownRule({
  id: "shyness",
  way: "each-way",
  between: "two-species",
  needs: { from: ["temperament.shy"], to: ["diet.pace"] },
  uses: {
    from: ["space.zones", "space.openWater", "size.adultLength", "diet.pace"],
    to: ["space.zones", "space.openWater", "social.settles", "size.adultLength"],
  },
  decidesBy: ["coverFromBustle", "muchSmaller"],
  mayYield: ["restricting"],
  mayAsk: ({ coverFromBustle }) => [{ on: "tank.cover", wanted: { min: coverFromBustle } }],
  judge: ({ from, to, thresholds }) => {
    if (!from["temperament.shy"] || from["diet.pace"] === "fast") return [];
    if (to["diet.pace"] !== "fast" || to["social.settles"]) return [];
    if (!shareAny(from["space.zones"], to["space.zones"])) return [];
    if (isMuchSmaller(to, from, thresholds)) return [];
    return [
      {
        weight: "restricting",
        watchFor: "hiding",
        condition: coverBeside(thresholds.coverFromBustle, from, to),
      },
    ];
  },
});

type Sized = SeenParty<never, "size.adultLength">;

/** Whether even the longest of one are much shorter than the shortest of the other; what nobody knows is not. */
function isMuchSmaller(one: Sized, other: Sized, { muchSmaller }: { readonly muchSmaller: number }): boolean {
  const [lengths, others] = [one["size.adultLength"], other["size.adultLength"]];
  if (!lengths || !others) return false;
  const shortest = preyLength(other.party, others) ?? 0;
  return grownLength(one.party, lengths) < decimal(muchSmaller * shortest);
}
