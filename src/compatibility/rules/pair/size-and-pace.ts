import { decimal } from "../../../decimal";
import { preyLength, roomLength } from "../../animals/lengths";
import { defineRule } from "../../engine/rule/define-rule";
import { shareAny } from "../shared/share-any";

/** Not about being eaten: a large fish that rushes about leaves a small one no rest, unless it can withdraw. */
export const sizeAndPace = defineRule({
  id: "size-and-pace",
  question: "Is it so much longer and faster that the other is pushed aside?",
  way: "each-way",
  needs: { from: ["diet.pace", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones"], to: ["space.zones", "diet.pace"] },
  decidesBy: ["muchLonger", "coverFromBustle"],
  mayYield: ["restricting"],
  measures: { longer: "cm", shorter: "cm" },
  judge: ({ from, to, thresholds }) => {
    if (from["diet.pace"] !== "fast" || to["diet.pace"] === "fast") return [];
    if (from.party.kind !== "fish" || to.party.kind !== "fish") return [];
    const longer = roomLength(from.party, from["size.adultLength"]);
    const shorter = preyLength(to.party, to["size.adultLength"]) ?? 0;
    const least = decimal(longer / thresholds.muchLonger);
    if (shorter > least || !shareAny(from["space.zones"], to["space.zones"])) return [];
    return [
      {
        weight: "restricting",
        measures: { longer, shorter },
        watchFor: "hiding",
        condition: { on: "tank.cover", wanted: { min: thresholds.coverFromBustle } },
      },
    ];
  },
});
