import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { assessPlan, planThatMeets } from "../../src/compatibility";
import { isMet, type Plan } from "../../src/plan";

const plan: Plan = {
  tank: { base: { shape: "rectangle", length: 60, width: 30 } },
  groups: [{ species: danioRerio, unsexed: 3 }],
};

describe("a condition of a verdict, met at the press of a button", () => {
  test("is met by the plan that comes of it", () => {
    const { conditions } = assessPlan(plan);
    expect(conditions.length).toBeGreaterThan(5);
    for (const condition of conditions) {
      const changed = planThatMeets(plan, condition);
      expect(changed && isMet(condition, changed)).toBe(true);
    }
  });

  test("leaves a plan alone that meets it", () => {
    expect(planThatMeets(plan, { on: "group.count", of: 0, wanted: { min: 2 } })).toBe(plan);
  });

  test("takes no animal away", () => {
    expect(planThatMeets(plan, { on: "group.count", of: 0, wanted: { max: 1 } })).toBeUndefined();
  });

  test("is left to the keeper where a species would have to be chosen", () => {
    const shy: Plan = { ...plan, groups: [{ species: trichogasterChuna, males: 1 }] };
    expect(planThatMeets(shy, { on: "group.company", of: 0, wanted: { oneOf: [true] } })).toBeUndefined();
  });
});
