import type { AssessedPlan } from "./assessed-plan";
import { type Judgement, judge } from "./engine";
import type { PairRule } from "./rule";
import type { Run, View } from "./scenarios";
import type { Subject } from "./subject";
import type { ThresholdValues } from "./thresholds";

/** Judges a pair of parties by one rule. */
export function judgePair(
  rule: PairRule,
  from: Subject,
  to: Subject,
  thresholds: ThresholdValues,
  plan?: AssessedPlan,
): Judgement {
  const sides = [
    { subject: from, needs: rule.needs.from, uses: rule.uses?.from ?? [] },
    { subject: to, needs: rule.needs.to, uses: rule.uses?.to ?? [] },
  ];
  const run: Run = ([a, b]) => rule.judge({ from: a as View, to: b as View, thresholds });
  return judge(rule, sides, [run], plan);
}
