import { decimal } from "../../../decimal";
import { grownLength, preyLength } from "../../animals/lengths";
import { ownRule } from "../../engine/rule/own-rule";
import { coverBeside } from "../shared/cover-beside";
import { shareAny } from "../shared/lists";

/**
 * Is it so much longer that the other is pushed aside?
 *
 * Not about being eaten: a large fish that moves about leaves a small one no rest, unless it can withdraw.
 */
export const sizeAndPace = /* @__PURE__ */ ownRule({
  id: "size-and-pace",
  way: "each-way",
  between: "two-species",
  needs: { from: ["diet.pace", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones", "space.openWater"], to: ["space.zones", "space.openWater"] },
  decidesBy: ["muchLonger", "coverFromBustle"],
  mayYield: ["restricting"],
  measures: { longer: "cm", shorter: "cm" },
  mayAsk: ({ coverFromBustle }) => [{ on: "tank.cover", wanted: { min: coverFromBustle } }],
  judge: ({ from, to, thresholds }) => {
    if (from["diet.pace"] === "slow") return [];
    if (from.party.kind !== "fish" || to.party.kind !== "fish") return [];
    if (!shareAny(from["space.zones"], to["space.zones"])) return [];
    const longer = grownLength(from.party, from["size.adultLength"]);
    const shorter = preyLength(to.party, to["size.adultLength"]) ?? 0;
    const least = decimal(longer / thresholds.muchLonger);
    if (shorter > least) return [];
    return [
      {
        weight: "restricting",
        measures: { longer, shorter },
        watchFor: "hiding",
        condition: coverBeside(thresholds.coverFromBustle, from, to),
      },
    ];
  },
});
