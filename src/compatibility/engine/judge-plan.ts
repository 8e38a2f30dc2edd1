import { noStock, stocksOf, traitsWeighed, weighedBy } from "../animals/stock";
import type { ThresholdValues } from "../thresholds";
import { judge, type Run } from "./judge";
import { type Judgement, leftOpen, silent } from "./judgement";
import { missingQuestions } from "./questions";
import type { PlanRule } from "./rule/rule";
import { decidingBy, readingsOf } from "./seen";
import type { PlanSubjects } from "./standing";
import type { Subject } from "./subject";
import { isMissing, type Reading } from "./worlds";

/** Judges a plan by one rule: each of its groups, all of them together, or the plan as a whole. */
export function judgePlan(rule: PlanRule, plan: PlanSubjects, values: ThresholdValues): readonly Judgement[] {
  const { subjects } = plan;
  const seen = { plan: readingsOf(rule, plan.plan), thresholds: decidingBy(rule, values) };
  const weighed = rule.weighs ? subjects : [];
  const unweighed = readingsFor(weighed, weighedBy).filter(isMissing);
  if (unweighed.length > 0) return [leftOpen(rule, silent, missingQuestions(rule, unweighed))];

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
        { sides: [], roles: [], plan, beside },
      ),
    ];
  if (rule.way === "all-groups")
    return [
      judgeTogether(
        rule,
        runs((groups) => ({ groups })),
        plan,
      ),
    ];
  return subjects.map((subject) =>
    judge(
      rule,
      runs(([from]) => ({ from })),
      { sides: [subject], roles: ["from"], plan, beside },
    ),
  );
}

const readingsFor = (subjects: readonly Subject[], traits: readonly Reading["trait"][]) =>
  subjects.flatMap((subject) => traits.map((trait): Reading => ({ subject, trait })));

/**
 * Judges the groups of which everything needed is known. The others may add to what is found, and take nothing from it:
 * for them the rule stays open. Nor is less certain for a group of which something else is not known.
 */
function judgeTogether(rule: PlanRule, runs: readonly Run[], plan: PlanSubjects): Judgement {
  const among = (sides: readonly Subject[]) =>
    judge(rule, runs, { sides, roles: sides.map(() => "from"), plan });
  const missing = readingsFor(plan.subjects, rule.needs?.from ?? []).filter(isMissing);
  const sides = plan.subjects.filter((subject) => !isAbout(missing, subject));
  const known = sides.filter((subject) => !isAbout(missingUses(rule, sides), subject));
  const judgement = among(sides);
  const least = known.length < sides.length ? Math.max(judgement.least, among(known).least) : judgement.least;
  if (missing.length === 0) return { ...judgement, least };
  return leftOpen(rule, judgement, missingQuestions(rule, missing), least);
}

/** What is missing and may lessen what a rule finds. */
const missingUses = ({ uses, mayAdd = [] }: PlanRule, subjects: readonly Subject[]) =>
  readingsFor(subjects, uses?.from ?? []).filter(
    (reading) => isMissing(reading) && !mayAdd.includes(reading.trait),
  );

const isAbout = (readings: readonly Reading[], subject: Subject) =>
  readings.some((reading) => reading.subject === subject);
