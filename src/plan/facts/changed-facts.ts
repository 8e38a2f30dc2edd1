import type { CheckedPlan } from "../checked-plan";
import { isSameParty } from "../party";
import { type Condition, holds } from "./condition";
import { isOfGroup, type PlanReadings, readPlan, tankFacts, tankReadings } from "./read-fact";

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
    ...(changed(({ offerings }) => offerings) ? ["group.offerings"] : []),
    ...(changed(({ tank }) => tank.hides) ? ["tank.hides"] : []),
    ...(haveSameParties(before, after) ? [] : ["group.company"]),
  ]);
}

const haveSameParties = (before: CheckedPlan, after: CheckedPlan): boolean =>
  before.parties.length === after.parties.length &&
  after.parties.every((party, index) => isSameParty(before.parties[index] ?? party, party));

/** Whether two plans both meet a condition, or both do not, or both leave it open; no where it hangs on a group. */
export function meetsAlike(condition: Condition, before: CheckedPlan, after: CheckedPlan): boolean {
  return !isOfGroup(condition.on) && holds(condition, before, unread) === holds(condition, after, unread);
}

/** What is about the tank or its water hangs on no trait. */
const unread = () => undefined;
