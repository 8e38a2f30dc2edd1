import type { PartialRange } from "../../../ranges";
import type { Value } from "../../../species";
import { defineRule } from "../../rule";

export const groupSize = defineRule({
  id: "group-size",
  question: "Are there as many of it as belong together?",
  way: "each-group",
  needs: { from: ["social.living"] },
  uses: { from: ["social.group"] },
  mayYield: ["restricting"],
  judge: ({ from, thresholds }) => {
    const { "social.living": living, "social.group": group } = from;
    const count = from.party.count ?? 1;
    const within = numbers(living, group, count, thresholds.shoal);
    if (!within) return [];
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

/** The numbers that belong together; undefined where any number does. */
function numbers(
  living: Value<"social.living">,
  group: Value<"social.group"> | undefined,
  count: number,
  shoal: number,
): PartialRange | undefined {
  if (living === "alone") return { max: 1 };
  if (group) return { min: leastNumber(group, count) };
  return living === "shoal" || living === "group" ? { min: shoal } : undefined;
}

/** The least number, or the next above a span in which one animal would take all the harm. */
function leastNumber({ least, avoid }: Value<"social.group">, count: number): number {
  const avoided = avoid && count >= Math.max(least, avoid.min) && count <= avoid.max;
  return avoided ? avoid.max + 1 : least;
}
