import { ownRule } from "../../engine/rule/own-rule";

/**
 * Some thrive only with a cool season. That is worth knowing where the plan's water does not become so cool, unless it
 * would be too cool for others of its animals.
 */
export const coolSeason = /* @__PURE__ */ ownRule({
  id: "cool-season",
  question: "Is there a cool season for those that need one, if all bear it?",
  way: "all-groups",
  uses: { from: ["water.coolSeason", "water.temperature"] },
  reads: ["water.temperature", "water.coolest"],
  mayYield: ["advisory"],
  measures: { season: "degC", months: "count" },
  judge: ({ groups, plan: { "water.temperature": usual = 0, "water.coolest": coolest = usual } }) =>
    groups.flatMap(({ "water.coolSeason": season = "none" }, about) => {
      if (season === "none") return [];
      const { min = 0, max = min, months } = season;
      const isBorne = groups.every(
        ({ "water.temperature": figures }, other) => other === about || (figures?.kept.min ?? min) <= min,
      );
      const isTold = isBorne && coolest > max;
      return isTold
        ? [{ about, weight: "advisory" as const, measures: { season: { min, max }, months } }]
        : [];
    }),
});
