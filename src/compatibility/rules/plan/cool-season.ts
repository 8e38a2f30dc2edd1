import type { PartialRange } from "../../../ranges";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Some thrive only with a cool season. That is worth knowing where the plan's water does not become so cool, as far as all
 * its animals bear it, and where they bear none of it nothing is told.
 */
export const coolSeason = /* @__PURE__ */ ownRule({
  id: "cool-season",
  question: "Has each that needs a cool season one, if all can bear it?",
  way: "all-groups",
  uses: { from: ["water.coolSeason", "water.temperature"] },
  reads: ["water.temperature", "water.coolest"],
  mayYield: ["advisory"],
  measures: { season: "degC", months: "count", coolest: "degC" },
  judge: ({ groups, plan }) => {
    const { "water.temperature": usual, "water.coolest": coolest } = plan;
    const known = coolest ?? usual;
    const borne = groups.flatMap(({ "water.temperature": figures }) => figures?.kept.min ?? []);
    return groups.flatMap(({ "water.coolSeason": needed }, about) => {
      if (known === undefined || needed === undefined || needed === "none") return [];
      const season = within(needed, borne);
      if (season.max === undefined || known <= season.max || season.max < (season.min ?? season.max))
        return [];
      return [{ about, weight: "advisory" as const, measures: { season, months: needed.months, coolest } }];
    });
  },
});

/** A cool season no cooler than all bear. */
function within({ min, max }: PartialRange, borne: readonly number[]): PartialRange {
  const least = [...borne, ...(min === undefined ? [] : [min])];
  return { ...(least.length > 0 && { min: Math.max(...least) }), ...(max !== undefined && { max }) };
}
