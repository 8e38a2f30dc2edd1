import { decimal } from "../../../decimal";
import { filterCapacity, filterCapacityDomain } from "../../../load";
import { once } from "../../../made-once";
import { nitrogenOf, weighing } from "../../animals/stock";
import { wantedBy } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";

/** What a square metre of ripe media likely takes up, mg/d: what is known of filters spans a factor, of which this is the middle. */
const likelyRate = /* @__PURE__ */ once(() => {
  const { min, max } = filterCapacity({ mediaArea: 1, age: filterCapacityDomain.age.max });
  return Math.sqrt(min * max);
});

/**
 * Does the filter take up the ammonia that the whole stock gives off?
 *
 * By what filters likely take up, for the most that the grown stock is fed: one caution, not the product of two.
 */
export const filterNitrogen = /* @__PURE__ */ ownRule({
  id: "filter-nitrogen",
  way: "once",
  sums: weighing,
  mayAdd: wantedBy,
  reads: ["tank.filter.age"],
  mayYield: ["restricting"],
  measures: { nitrogen: "mg/d", age: "d" },
  judge: ({ plan, stock }) => {
    const nitrogen = nitrogenOf(stock);
    if (nitrogen === 0) return [];
    return [
      {
        weight: "restricting",
        measures: { nitrogen, age: plan["tank.filter.age"] },
        watchFor: "gasping",
        condition: { on: "tank.filter.ripeArea", wanted: { min: decimal(nitrogen / likelyRate()) } },
      },
    ];
  },
});
