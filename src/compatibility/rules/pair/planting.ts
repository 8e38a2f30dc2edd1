import { ownRule } from "../../engine/rule/own-rule";

/**
 * Does one destroy the plants that the other cannot do without?
 *
 * No planting holds where plants are pulled out; where they are eaten, tough ones stay. What nobody knows leaves it open.
 */
export const planting = /* @__PURE__ */ ownRule({
  id: "planting",
  way: "each-way",
  between: "two-species",
  uses: { from: ["effects.eatsPlants", "effects.uproots"], to: ["space.grownInPlants"] },
  mayYield: ["blocking", "advisory"],
  measures: { harm: "plantHarm" },
  judge: ({ from, to }) => {
    const { "effects.eatsPlants": eats, "effects.uproots": uproots } = from;
    const needs = to["space.grownInPlants"];
    if (needs === false || (eats === false && uproots === false)) return [];
    if (needs === undefined || uproots === undefined) return "unknown";
    if (uproots) return [{ weight: "blocking", measures: { harm: "uproots" } }];
    return eats === undefined ? "unknown" : [{ weight: "advisory", measures: { harm: "eats" } }];
  },
});
