import type { CheckedPlan } from "./checked-plan";
import { type Condition, holds } from "./condition";
import { isOfGroup, type PlanReadings, readPlan, tankFacts, tankReadings } from "./read-fact";

/** The facts of a group that hang on more of the plan than the group itself: on what it is fed, hides in, lives with. */
const besideTheGroup = {
  "group.offerings": ({ offerings }: CheckedPlan) => offerings,
  "tank.hides": ({ tank }: CheckedPlan) => tank.hides,
  "group.company": ({ parties }: CheckedPlan) =>
    parties.map(({ animals: { id, form, kin } }) => [id, form, kin.count]),
} as const;

/**
 * The names of what a rule or a condition may read of a plan, and of which two plans say something else; what hangs on
 * one group alone is left out.
 */
export function changedFacts(before: CheckedPlan, after: CheckedPlan): ReadonlySet<string> {
  const ofPlan = [...Object.keys(tankFacts), ...Object.keys(tankReadings)] as (keyof PlanReadings)[];
  const changed = (read: (plan: CheckedPlan) => unknown) =>
    JSON.stringify(read(before)) !== JSON.stringify(read(after));
  return new Set<string>([
    ...ofPlan.filter((name) => changed((plan) => readPlan(plan, name))),
    ...Object.entries(besideTheGroup).flatMap(([name, read]) => (changed(read) ? [name] : [])),
  ]);
}

/** Whether two plans both meet a condition, or both do not, or both leave it open; no where it hangs on a group. */
export function meetsAlike(condition: Condition, before: CheckedPlan, after: CheckedPlan): boolean {
  return !isOfGroup(condition.on) && holds(condition, before, unread) === holds(condition, after, unread);
}

/** What is about the tank or its water hangs on no trait. */
const unread = () => undefined;
