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

function numbers(
  living: string,
  group:
    | { readonly least: number; readonly avoid?: { readonly min: number; readonly max: number } | undefined }
    | undefined,
  count: number,
  shoal: number,
) {
  if (living === "alone") return { max: 1 };
  if (group?.avoid && count >= group.avoid.min && count <= group.avoid.max)
    return { min: group.avoid.max + 1 };
  if (group) return { min: group.least };
  return living === "shoal" || living === "group" ? { min: shoal } : undefined;
}
