import { decimal } from "../../../decimal";
import { filterCapacity, filterCapacityDomain } from "../../../load";
import { nitrogenOf } from "../../animals/stock";
import { wantedBy } from "../../animals/wanted";
import { defineRule } from "../../engine/rule/define-rule";

/** Least that a square metre of ripe media takes up, mg/d. */
const leastRate = /* @__PURE__ */ filterCapacity({ mediaArea: 1, age: filterCapacityDomain.age.max }).min;

/** By the least that is known of filters, for the most that the grown stock is fed. */
export const filterNitrogen = /* @__PURE__ */ defineRule({
  id: "filter-nitrogen",
  question: "Does the filter take up the ammonia that the whole stock gives off?",
  way: "once",
  weighs: true,
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
        condition: { on: "tank.filter.ripeArea", wanted: { min: decimal(nitrogen / leastRate) } },
      },
    ];
  },
});
