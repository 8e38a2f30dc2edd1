import type { ThresholdValues } from "../threshold-values";
import { type Case, judge, type Run } from "./judge";
import type { Judgement } from "./judgement";
import type { PartyRole } from "./rule/finding";
import type { PairRule } from "./rule/rule";
import { decidingBy } from "./seen";
import type { PlanSubjects } from "./standing";
import type { Subject } from "./subject";

const roles: readonly PartyRole[] = ["from", "to"];

/** Judges pairs of parties by one rule, in a plan or by themselves. */
export function pairJudge(rule: PairRule, values: ThresholdValues, plan?: PlanSubjects) {
  const { thresholds, mayAsk } = decidingBy(rule, values);
  const runs: readonly Run[] = [([from, to]) => rule.judge({ from, to, thresholds } as never)];
  return (sides: readonly Subject[], takesPlace?: Case["takesPlace"]): Judgement =>
    judge(rule, runs, { sides, roles, plan, mayAsk, takesPlace });
}
