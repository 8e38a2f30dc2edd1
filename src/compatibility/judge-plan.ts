import type { AssessedPlan } from "./assessed-plan";
import { type Judgement, judge, leftOpen, silent } from "./engine";
import { known, missing } from "./open-questions";
import type { PlanRule, Rule } from "./rule";
import type { Run, Side, View } from "./scenarios";
import { stocksOf } from "./stock";
import type { Subject } from "./subject";
import type { ThresholdValues } from "./thresholds";

/** Judges a plan by one rule: each of its groups, all of them together, or the plan as a whole. */
export function judgePlan(
  rule: PlanRule,
  subjects: readonly Subject[],
  thresholds: ThresholdValues,
  plan: AssessedPlan,
): readonly Judgement[] {
  const groups = subjects.map((subject) => sideOf(subject, rule));
  if (rule.way === "all-groups") {
    return [judgeTogether(rule, groups, (seen) => rule.judge({ groups: seen, plan, thresholds }), plan)];
  }
  const weighed = rule.weighs ? subjects.map(weighedSide) : [];
  const unweighed = weighed.filter((side) => !isKnown(side));
  if (unweighed.length > 0) return [leftOpen(rule, silent, missing(rule, unweighed))];
  const stocks = stocksOf(weighed.map(({ subject }) => subject));
  if (rule.way === "once") {
    const runs = stocks.map((stock) => () => rule.judge({ plan, stock, thresholds }));
    return [judge(rule, [], runs, plan, weighed)];
  }
  const runs = stocks.map(
    (stock): Run =>
      ([from]) =>
        rule.judge({ from: from as View, plan, stock, thresholds }),
  );
  return groups.map((group) => judge(rule, [group], runs, plan, weighed));
}

function sideOf(subject: Subject, rule: PlanRule): Side {
  if (rule.way === "once") return { subject, needs: [], uses: [] };
  return { subject, needs: rule.needs.from, uses: rule.uses?.from ?? [] };
}

/** A group as the scales see it. */
const weighedSide = (subject: Subject): Side => ({
  subject,
  needs: ["size.adultLength"],
  uses: ["size.bodyShape", "size.lengthWeight"],
});

/** Judges the groups of which everything needed is known; for the others the rule stays open. */
function judgeTogether(rule: Rule, groups: readonly Side[], run: Run, plan: AssessedPlan): Judgement {
  const judgement = judge(rule, groups.filter(isKnown), [run], plan);
  const unseen = groups.filter((side) => !isKnown(side));
  return unseen.length > 0 ? leftOpen(rule, judgement, missing(rule, unseen)) : judgement;
}

const isKnown = (side: Side) => side.needs.every((trait) => known(side, trait));
