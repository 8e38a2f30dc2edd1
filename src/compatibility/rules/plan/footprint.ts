import type { Judged } from "../../finding";
import { defineRule } from "../../rule";
import { floorNeeded } from "../shared/floor";
import { roomLength } from "../shared/total-length";

/** An animal longer than the tank is wide cannot turn; without a figure for each more, each adds its share. */
export const footprint = defineRule({
  id: "footprint",
  question: "Is the floor large enough for the group, and wide enough to turn?",
  way: "each-group",
  needs: { from: ["space.footprint", "size.adultLength"] },
  uses: { from: ["space.furtherFootprint"] },
  mayYield: ["blocking", "restricting"],
  judge: ({ from, plan }): readonly Judged<"blocking" | "restricting">[] => {
    const { count } = from.party.kin;
    const needed = floorNeeded(from["space.footprint"], from["space.furtherFootprint"], count);
    const measures = {
      needed: { value: needed, unit: "cm2" },
      planned: { value: plan.nominal.footprint, unit: "cm2" },
    };
    const { width } = plan.geometry;
    const length = roomLength(from.party, from["size.adultLength"]);
    const turning = { length: { value: length, unit: "cm" }, width: { value: width, unit: "cm" } };
    return [
      ...(length > width ? [{ weight: "blocking", measures: turning } as const] : []),
      { weight: "restricting", measures, condition: { on: "tank.footprint", within: { min: needed } } },
    ];
  },
});
