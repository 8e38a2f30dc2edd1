import { type CheckedPlan, type PlanReadings, readPlan } from "../../../plan/inner";
import type { ThresholdName, ThresholdValues } from "../../threshold-values";
import type { GivenCondition } from "./finding";
import type { Rule } from "./rule";

/** What hangs on the thresholds alone, of a rule. */
interface Deciding {
  /** Those that it says it decides by. */
  readonly thresholds: Partial<Record<ThresholdName, number>>;
  /** The utmost that it may ask for where it cannot tell. */
  readonly mayAsk: readonly GivenCondition[];
}

const known = /* @__PURE__ */ new WeakMap<ThresholdValues, WeakMap<Rule, Deciding>>();

/** How a rule decides by a table of thresholds, made out once for each. */
export function decidingBy(rule: Rule, values: ThresholdValues): Deciding {
  const ofTable = known.get(values) ?? new WeakMap<Rule, Deciding>();
  known.set(values, ofTable);
  const deciding = ofTable.get(rule) ?? decide(rule, values);
  ofTable.set(rule, deciding);
  return deciding;
}

function decide(rule: Rule, values: ThresholdValues): Deciding {
  const thresholds = Object.freeze(pick(rule.decidesBy ?? [], (name) => values[name]));
  return { thresholds, mayAsk: rule.mayAsk?.(thresholds as never) ?? [] };
}

/** What a rule says it reads of a plan. */
export function readingsOf({ reads = [] }: Rule, plan: CheckedPlan) {
  return pick<keyof PlanReadings, unknown>(reads, (name) => readPlan(plan, name));
}

const pick = <Name extends string, Held>(names: readonly Name[], value: (name: Name) => Held) =>
  Object.fromEntries(names.map((name) => [name, value(name)]));
