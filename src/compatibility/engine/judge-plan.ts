import { noStock, stocksOf, traitsWeighed, weighedBy } from "../animals/stock";
import type { ThresholdValues } from "../threshold-values";
import { judge, type Run } from "./judge";
import { type Judgement, leftOpen, silent } from "./judgement";
import { missingQuestions } from "./questions";
import type { GivenCondition } from "./rule/finding";
import type { PlanRule } from "./rule/rule";
import { decidingBy, readingsOf } from "./seen";
import { type PlanSubjects, utmostOf } from "./standing";
import type { Subject } from "./subject";
import { isMissing, type Reading } from "./worlds";

/** Judges a plan by one rule: each of its groups, all of them together, or the plan as a whole. */
export function judgePlan(rule: PlanRule, plan: PlanSubjects, values: ThresholdValues): readonly Judgement[] {
  const { subjects } = plan;
  const seen = { plan: readingsOf(rule, plan.plan), thresholds: decidingBy(rule, values) };
  const weighed = rule.weighs ? subjects : [];
  const unweighed = readingsFor(weighed, weighedBy).filter(isMissing);
  const mayAsk = rule.mayAsk?.(seen.thresholds as never) ?? [];
  if (unweighed.length > 0)
    return [
      leftOpen(
        rule,
        silent,
        missingQuestions(rule, unweighed),
        utmostOf(rule, { sides: subjects, plan, mayAsk }),
      ),
    ];

  const stocks = rule.weighs ? stocksOf(weighed) : [noStock];
  const beside: readonly Reading[] = traitsWeighed(weighed);
  const runs = (see: (views: Parameters<Run>[0]) => object) =>
    stocks.map(
      (stock): Run =>
        (views) =>
          rule.judge({ ...seen, stock, ...see(views) } as never),
    );
  if (rule.way === "once")
    return [
      judge(
        rule,
        runs(() => ({})),
        { sides: [], roles: [], plan, mayAsk, beside },
      ),
    ];
  if (rule.way === "all-groups")
    return [
      judgeTogether(
        rule,
        runs((groups) => ({ groups })),
        plan,
        mayAsk,
      ),
    ];
  return subjects.map((subject) =>
    judge(
      rule,
      runs(([from]) => ({ from })),
      { sides: [subject], roles: ["from"], plan, mayAsk, beside },
    ),
  );
}

const readingsFor = (subjects: readonly Subject[], traits: readonly Reading["trait"][]) =>
  subjects.flatMap((subject) => traits.map((trait): Reading => ({ subject, trait })));

/**
 * Judges the groups of which everything needed is known. The others may add to what is found, and take nothing from it:
 * for them the rule stays open. Nor is less certain for a group of which something else is not known, nor for one that
 * could be company but of which nobody knows anything.
 */
function judgeTogether(
  rule: PlanRule,
  runs: readonly Run[],
  plan: PlanSubjects,
  mayAsk: readonly GivenCondition[],
): Judgement {
  const among = (sides: readonly Subject[], within = plan) =>
    judge(rule, runs, { sides, roles: sides.map(() => "from"), plan: within, mayAsk });
  const judgeable = ({ subjects }: PlanSubjects) =>
    subjects.filter((subject) => readingsFor([subject], rule.needs?.from ?? []).every(isKnown));
  const sides = judgeable(plan);
  const judgement = among(sides);
  const familiar = withoutStrangers(rule, plan);
  const some = judgeable(familiar);
  const known = some.filter((subject) => missingUses(rule, [subject]).length === 0);
  const certain = [
    ...(familiar === plan ? [] : [among(some, familiar)]),
    ...(known.length < some.length ? [among(known, familiar)] : []),
  ];
  const least = certain.reduce((most, other) => Math.max(most, other.least), judgement.least);
  const missing = readingsFor(plan.subjects, rule.needs?.from ?? []).filter(isMissing);
  if (missing.length === 0) return { ...judgement, least };
  const utmost = utmostOf(rule, { sides: plan.subjects, plan, mayAsk });
  return leftOpen(rule, judgement, missingQuestions(rule, missing), utmost, least);
}

const isKnown = (reading: Reading) => !isMissing(reading);

/** The plan without those of whom nobody knows anything that the rule looks at. */
function withoutStrangers({ needs, uses }: PlanRule, plan: PlanSubjects): PlanSubjects {
  const looked = [...(needs?.from ?? []), ...(uses?.from ?? [])];
  const familiar = plan.subjects.filter((subject) => readingsFor([subject], looked).some(isKnown));
  if (familiar.length === plan.subjects.length) return plan;
  return {
    plan: { ...plan.plan, parties: familiar.map(({ party }) => party) },
    subjects: familiar.map((subject, index) => ({ ...subject, index })),
  };
}

/** What is missing and may lessen what a rule finds. */
const missingUses = ({ uses, mayAdd = [] }: PlanRule, subjects: readonly Subject[]) =>
  readingsFor(subjects, uses?.from ?? []).filter(
    (reading) => isMissing(reading) && !mayAdd.includes(reading.trait),
  );
