import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is there a cool season for those that need one?
 *
 * Some thrive only with a cool season. That is worth knowing where the plan's water does not become so cool, unless it
 * would be too cool for others of its animals.
 */
export const coolSeason = /* @__PURE__ */ ownRule({
  id: "cool-season",
  way: "all-groups",
  uses: { from: ["water.coolSeason", "water.temperature"] },
  reads: ["water.temperature", "water.coolest"],
  mayYield: ["advisory"],
  measures: { season: "degC" },
  judge: ({ groups, plan: { "water.temperature": usual, "water.coolest": coolest = usual } }) =>
    groups.flatMap(({ "water.coolSeason": needed = "none" }, about) => {
      if (needed === "none") return [];
      const { min = 0, max = min } = needed;
      const isBorne = ({ "water.temperature": figures }: (typeof groups)[number], other: number) =>
        other === about || (figures?.kept.min ?? min) <= min;
      if (coolest === undefined || coolest <= max || !groups.every(isBorne)) return [];
      return [{ about, weight: "advisory" as const, measures: { season: { min, max } } }];
    }),
});
