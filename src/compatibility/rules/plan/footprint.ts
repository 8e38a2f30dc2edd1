import { floorNeeded } from "../../animals/room";
import { isYoung, roomLength } from "../../animals/lengths";
import { defineRule } from "../../engine/rule/define-rule";
import type { SeenParty } from "../../engine/rule/rule";

/**
 * An animal longer than the tank is wide cannot turn, unless it is as supple as an eel; without a figure for each more,
 * each adds its share.
 */
export const footprint = defineRule({
  id: "footprint",
  question: "Is the floor large enough for the group, and wide enough to turn?",
  way: "each-group",
  needs: { from: ["space.footprint", "size.adultLength"] },
  uses: { from: ["space.furtherFootprint", "size.bodyShape"] },
  reads: ["tank.footprint", "tank.width"],
  mayYield: ["blocking", "restricting"],
  measures: { needed: "cm2", planned: "cm2", length: "cm", width: "cm", today: "cm", turnsAt: "cm" },
  judge: ({ from, plan }) => {
    const { count } = from.party.kin;
    const needed = floorNeeded(from["space.footprint"], from["space.furtherFootprint"], count);
    return [
      ...cannotTurn(from, plan["tank.width"]),
      {
        weight: "restricting",
        measures: { needed, planned: plan["tank.footprint"] },
        condition: { on: "tank.footprint", wanted: { min: needed } },
      },
    ];
  },
});

/** Young are judged by what they grow to; where they still fit, the finding says until when. */
function cannotTurn(from: SeenParty<"size.adultLength", "size.bodyShape">, width: number) {
  const { party } = from;
  const length = roomLength(party, from["size.adultLength"]);
  if (length <= width || from["size.bodyShape"] === "eel-like") return [];
  const fits = isYoung(party) && party.length !== undefined && party.length <= width;
  const measures = { length, width, ...(fits && { today: party.length, turnsAt: width }) };
  return [{ weight: "blocking" as const, measures }];
}
