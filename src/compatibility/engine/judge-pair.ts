import type { ThresholdValues } from "../threshold-values";
import { judgeOf } from "./judge";
import type { PairRule } from "./rule/rule";
import { decidingBy } from "./seen";
import type { PlanSubjects } from "./standing";

/** Judges pairs of parties by one rule, in a plan or by themselves. */
export function pairJudge(rule: PairRule, values: ThresholdValues, plan?: PlanSubjects) {
  const { thresholds, mayAsk } = decidingBy(rule, values);
  return judgeOf(rule, [([from, to]) => rule.judge({ from, to, thresholds } as never)], { plan, mayAsk });
}
