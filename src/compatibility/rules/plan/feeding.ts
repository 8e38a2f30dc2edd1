import { ownRule } from "../../engine/rule/own-rule";

/**
 * Does food reach it where, when and as what it eats?
 *
 * Who takes dry food by day is fed by every keeper; what feeds in the dark or takes none is easily forgotten.
 */
export const feeding = /* @__PURE__ */ ownRule({
  id: "feeding",
  way: "each-group",
  needs: { from: ["diet.foods", "diet.reach", "diet.light"] },
  reads: ["offerings"],
  mayYield: ["restricting"],
  measures: { places: ["zone"], hours: ["light"] },
  judge: ({ from, plan }) => {
    const [foods, places, hours] = [from["diet.foods"], from["diet.reach"], from["diet.light"]];
    if (!plan.offerings && foods.includes("dry") && hours.includes("day")) return [];
    return [
      {
        weight: "restricting",
        measures: { places, hours },
        watchFor: "thin",
        condition: { on: "group.offerings", of: "from", wanted: { oneOf: foods } },
      },
    ];
  },
});
