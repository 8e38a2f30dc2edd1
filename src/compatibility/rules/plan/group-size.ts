import type { Value } from "../../../species";
import { defineRule } from "../../rule";

export const groupSize = defineRule({
  id: "group-size",
  question: "Are there as many of it as belong together?",
  way: "each-group",
  needs: { from: ["social.living", "social.group"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const { count = 1 } = from.party.kin;
    const within =
      from["social.living"] === "alone" ? { max: 1 } : { min: leastNumber(from["social.group"], count) };
    const measures = { needed: within, planned: { value: count } };
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "hiding",
        condition: { on: "group.count", of: "from", within },
      },
    ];
  },
});

/** The least number, or the next above a span in which one animal would take all the harm. */
function leastNumber({ least, avoid }: Value<"social.group">, count: number): number {
  const avoided = avoid && count >= Math.max(least, avoid.min) && count <= avoid.max;
  return avoided ? avoid.max + 1 : least;
}
