import type { ThresholdValues } from "../threshold-values";
import type { PlanSubjects } from "./answers/standing";
import { judgeOf } from "./judge";
import { decidingBy } from "./rule/deciding";
import type { PairRule } from "./rule/rule";

/** Judges pairs of parties by one rule, in a plan or by themselves. */
type PairJudge = ReturnType<typeof judgeOf>;

const alone = /* @__PURE__ */ new WeakMap<ThresholdValues, WeakMap<PairRule, PairJudge>>();

/** How a rule judges pairs of parties in a plan, or by themselves: that is made out once for a table of thresholds. */
export function pairJudge(rule: PairRule, values: ThresholdValues, plan?: PlanSubjects): PairJudge {
  if (plan) return judging(rule, values, plan);
  const byRule = alone.get(values) ?? new WeakMap<PairRule, PairJudge>();
  alone.set(values, byRule);
  const judge = byRule.get(rule) ?? oneAtATime(() => judging(rule, values));
  byRule.set(rule, judge);
  return judge;
}

function judging(rule: PairRule, values: ThresholdValues, plan?: PlanSubjects): PairJudge {
  const { thresholds, mayAsk } = decidingBy(rule, values);
  return judgeOf(rule, [(sides) => rule.judge({ from: sides[0], to: sides[1], thresholds } as never)], {
    plan,
    mayAsk,
  });
}

/** Judges one case after the other; one that a rule asks for while it judges has a judge of its own. */
function oneAtATime(make: () => PairJudge): PairJudge {
  const judge = make();
  let isJudging = false;
  return (...given) => {
    if (isJudging) return make()(...given);
    isJudging = true;
    try {
      return judge(...given);
    } finally {
      isJudging = false;
    }
  };
}
