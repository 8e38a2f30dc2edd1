import { expectTypeOf, test } from "vitest";
import type { PlanChange } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";

declare const plan: Plan;

test("groups are changed by index, not as a list", () => {
  expectTypeOf<{ groups: { 0: { males: 2 }; 1: null } }>().toExtend<PlanChange>();
  expectTypeOf<{ groups: Record<number, { readonly length: number }> }>().toExtend<PlanChange>();
  // @ts-expect-error: a list of groups
  const list: PlanChange = { groups: plan.groups.map((group) => ({ ...group, males: 1 })) };
  return list;
});
