import { decimal } from "../../../decimal";
import { filterCapacity } from "../../../load";
import { defineRule } from "../../rule";
import { nitrogenOf } from "../../stock";

/** Least that a square metre of ripe media takes up, mg/d. */
const leastRate = /* @__PURE__ */ filterCapacity({ mediaArea: 1, age: Number.MAX_VALUE }).min;

/** By the least that is known of filters, for the most that the grown stock is fed. */
export const filterNitrogen = defineRule({
  id: "filter-nitrogen",
  question: "Does the filter take up the ammonia that the whole stock gives off?",
  way: "once",
  weighs: true,
  mayYield: ["restricting"],
  judge: ({ plan, stock }) => {
    const nitrogen = nitrogenOf(stock);
    if (nitrogen === 0) return [];
    const age = plan.tank.filter?.age;
    const measures = {
      nitrogen: { value: nitrogen, unit: "mg/d" },
      ...(age !== undefined && { age: { value: age, unit: "d" } }),
    };
    const min = decimal(nitrogen / leastRate);
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "gasping",
        condition: { on: "tank.filter.ripeArea", within: { min } },
      },
    ];
  },
});
