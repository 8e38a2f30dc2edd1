import { type CheckedPlan, type PlanReadings, readPlan } from "../../plan/inner";
import type { ThresholdName, ThresholdValues } from "../threshold-values";
import type { Rule } from "./rule/rule";

type Deciding = Partial<Record<ThresholdName, number>>;

const picked = /* @__PURE__ */ new WeakMap<ThresholdValues, Map<Rule, Deciding>>();

/** The thresholds that a rule says it decides by, picked once for each table. */
export function decidingBy(rule: Rule, values: ThresholdValues): Deciding {
  const ofTable = picked.get(values) ?? new Map<Rule, Deciding>();
  picked.set(values, ofTable);
  const known = ofTable.get(rule) ?? Object.freeze(pick(rule.decidesBy ?? [], (name) => values[name]));
  ofTable.set(rule, known);
  return known;
}

/** What a rule says it reads of a plan. */
export function readingsOf({ reads = [] }: Rule, plan: CheckedPlan) {
  return pick<keyof PlanReadings, unknown>(reads, (name) => readPlan(plan, name));
}

const pick = <Name extends string, Held>(names: readonly Name[], value: (name: Name) => Held) =>
  Object.fromEntries(names.map((name) => [name, value(name)]));
