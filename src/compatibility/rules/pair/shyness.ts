import { defineRule } from "../../engine/rule/define-rule";
import { coverBeside } from "../shared/cover-beside";
import { shareAny } from "../shared/share-any";

/** Restless: first at the food, and not of those that swim calmly. */
export const shyness = /* @__PURE__ */ defineRule({
  id: "shyness",
  question: "Does the other's bustle keep it in hiding?",
  way: "each-way",
  needs: { from: ["temperament.shy"], to: ["diet.pace"] },
  uses: {
    from: ["space.zones", "space.openWater"],
    to: ["space.zones", "space.openWater", "social.settles"],
  },
  decidesBy: ["coverFromBustle"],
  mayYield: ["restricting"],
  mayAsk: ({ coverFromBustle }) => [{ on: "tank.cover", wanted: { min: coverFromBustle } }],
  judge: ({ from, to, thresholds }) => {
    if (from.party.id === to.party.id) return [];
    if (!from["temperament.shy"] || to["diet.pace"] !== "fast" || to["social.settles"]) return [];
    if (!shareAny(from["space.zones"], to["space.zones"])) return [];
    return [
      {
        weight: "restricting",
        watchFor: "hiding",
        condition: coverBeside(thresholds.coverFromBustle, from, to),
      },
    ];
  },
});
