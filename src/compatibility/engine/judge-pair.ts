import type { ThresholdValues } from "../thresholds";
import { judge, type Role, type Run } from "./judge";
import type { Judgement } from "./judgement";
import type { PairRule } from "./rule";
import { decidingBy } from "./seen";
import type { PlanSubjects } from "./standing";
import type { Subject } from "./subject";

const roles: readonly Role[] = ["from", "to"];

/** Judges a pair of parties by one rule. */
export function judgePair(
  rule: PairRule,
  from: Subject,
  to: Subject,
  values: ThresholdValues,
  plan?: PlanSubjects,
): Judgement {
  const thresholds = decidingBy(rule, values);
  const run: Run = ([from, to]) => rule.judge({ from, to, thresholds } as never);
  return judge(rule, [run], { sides: [from, to], roles, plan });
}
