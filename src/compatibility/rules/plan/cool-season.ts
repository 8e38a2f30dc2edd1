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
  uses: { from: ["water.coolSeason", "water.temperature"] },
  reads: ["water.temperature", "water.coolest"],
  mayYield: ["advisory"],
  measures: { season: "degC" },
  judge: ({ groups, plan: { "water.temperature": usual, "water.coolest": coolest = usual } }) =>
    groups.flatMap(({ "water.coolSeason": needed = "none" }, about) => {
      if (needed === "none") return [];
      const season = borneSeason(
        needed,
        groups.map((group) => group["water.temperature"]),
      );
      if (coolest === undefined || season?.max === undefined || coolest <= season.max) return [];
      return [{ about, weight: "advisory" as const, measures: { season } }];
    }),
});
