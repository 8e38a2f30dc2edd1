import { ownRule } from "../../engine/rule/own-rule";
import { borneSeason } from "../shared/borne-season";

/**
 * Is there a cool season for those that need one?
 *
 * Some thrive only with a cool season. As much of it as all the animals of a plan bear is worth knowing where its water does
 * not become so cool; of those that bear none of it `season` tells.
 */
export const coolSeason = /* @__PURE__ */ ownRule({
  id: "cool-season",
  way: "all-groups",
  uses: { from: ["water.coolSeason"] },
  tells: { from: ["water.temperature"] },
  reads: ["water.temperature", "water.coolest"],
  mayYield: ["advisory"],
  measures: { season: "degC" },
  judge: ({ groups, plan: { "water.temperature": usual, "water.coolest": coolest = usual } }) => {
    const least = Math.max(
      ...groups.map((group) => group["water.temperature"]?.kept.min ?? Number.NEGATIVE_INFINITY),
    );
    return groups.flatMap(({ "water.coolSeason": needed = "none" }, about) => {
      const season = needed === "none" ? undefined : borneSeason(needed, least);
      if (!season || coolest === undefined || coolest <= season.max) return [];
      return [{ about, weight: "advisory" as const, measures: { season } }];
    });
  },
});
