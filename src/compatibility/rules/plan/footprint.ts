import type { Judged } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import { cm } from "../shared/cm";
import { floorNeeded } from "../shared/floor";
import { isYoung, roomLength } from "../shared/total-length";

type Answer = Judged<"blocking" | "restricting">;

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
  mayYield: ["blocking", "restricting"],
  judge: ({ from, plan }): readonly Answer[] => {
    const { count } = from.party.kin;
    const needed = floorNeeded(from["space.footprint"], from["space.furtherFootprint"], count);
    const measures = {
      needed: { value: needed, unit: "cm2" },
      planned: { value: plan.nominal.footprint, unit: "cm2" },
    };
    return [
      ...cannotTurn(from, plan.geometry.width),
      { weight: "restricting", measures, condition: { on: "tank.footprint", within: { min: needed } } },
    ];
  },
});

/** Young are judged by what they grow to; where they still fit, the finding says until when. */
function cannotTurn(from: Seen<"size.adultLength", "size.bodyShape">, width: number): readonly Answer[] {
  const { party } = from;
  const length = roomLength(party, from["size.adultLength"]);
  if (length <= width || from["size.bodyShape"] === "eel-like") return [];
  const fits = isYoung(party) && party.length !== undefined && party.length <= width;
  const today = fits && { today: cm(party.length), turnsAt: cm(width) };
  return [{ weight: "blocking", measures: { length: cm(length), width: cm(width), ...today } }];
}
