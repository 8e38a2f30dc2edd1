import { type CheckedPlan, type PlanReadings, readPlan } from "../../plan/inner";
import type { ThresholdName, ThresholdValues } from "../thresholds";
import type { Rule } from "./rule/rule";

/** The thresholds that a rule says it decides by. */
export function decidingBy({ decidesBy = [] }: Rule, values: ThresholdValues) {
  return pick<ThresholdName, number>(decidesBy, (name) => values[name]);
}

/** What a rule says it reads of a plan. */
export function readingsOf({ reads = [] }: Rule, plan: CheckedPlan) {
  return pick<keyof PlanReadings, unknown>(reads, (name) => readPlan(plan, name));
}

const pick = <Name extends string, Held>(names: readonly Name[], value: (name: Name) => Held) =>
  Object.fromEntries(names.map((name) => [name, value(name)]));
