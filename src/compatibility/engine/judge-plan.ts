import { gathered } from "../../gathered";
import { onceOfEachObject } from "../../made-once";
import type { TraitPath } from "../../species";
import { endsOf, type Summing } from "../animals/summing";
import type { ThresholdValues } from "../threshold-values";
import { type Judgement, leftOpen, silent } from "./answers/judgement";
import { decidingQuestions } from "./answers/questions";
import { type PlanSubjects, utmostOf } from "./answers/standing";
import { judgeOf, type Run, type Setting } from "./judge";
import { decidingBy, readingsOf } from "./rule/deciding";
import type { PlanRule } from "./rule/rule";
import { seenSums } from "./rule/seen-sums";
import { isMissing, type Reading, type Subject, subjectOf } from "./sides/subject";

/**
 * Judges by one rule some groups of a plan: each by itself, or all of them together, or the plan as a whole, as the rule's
 * way is.
 */
export function planJudge(
  rule: PlanRule,
  values: ThresholdValues,
  plan: PlanSubjects,
): (sides: readonly Subject[]) => readonly Judgement[] {
  const { subjects } = plan;
  const { thresholds, mayAsk } = decidingBy(rule, values);
  const readings = readingsOf(rule, plan.plan);
  const { lacking, ends, beside } = rule.sums ? summedBy(rule.sums)(subjects) : unsummed;
  if (lacking.length > 0) {
    const utmost = utmostOf(rule, { sides: subjects, plan, mayAsk });
    const open = leftOpen(rule, silent, decidingQuestions(rule, lacking), utmost);
    return () => [open];
  }
  const seen = ends.map((end) => ({ plan: readings, thresholds, ...seenSums(rule, end) }));
  if (rule.way === "all-groups") {
    const runs = seen.map(
      (all): Run =>
        (groups) =>
          rule.judge({ groups, ...all } as never),
    );
    return () => [judgeTogether(rule, runs, plan, { mayAsk, beside })];
  }
  const runs = seen.map(
    (all): Run =>
      ([from]) =>
        rule.judge({ from, ...all } as never),
  );
  const judge = judgeOf(rule, runs, { plan, mayAsk, beside });
  return rule.way === "once" ? () => [judge([])] : (sides) => sides.map((side) => judge([side]));
}

/** What comes of summing up the groups of a plan. */
interface SummedUp {
  /** What is not known, without which they cannot be summed up. */
  readonly lacking: readonly Reading[];
  /** The sum by the adopted facts, then at the ends of what may be true. */
  readonly ends: readonly unknown[];
  /** What that rests on. */
  readonly beside: readonly Reading[] | undefined;
}

const unsummed: SummedUp = { lacking: [], ends: [undefined], beside: undefined };

/** The groups of a plan summed up, once for all rules. */
const summedBy = /* @__PURE__ */ onceOfEachObject((summing: Summing) =>
  onceOfEachObject((subjects: readonly Subject[]): SummedUp => {
    const lacking = readingsFor(subjects, summing.needs).filter(isMissing);
    const beside = summing.restsOn(subjects).map(({ group, trait }) => group.reading(trait));
    return { lacking, beside, ends: lacking.length > 0 ? [] : endsOf(summing)(subjects) };
  }),
);

const readingsFor = (subjects: readonly Subject[], traits: readonly Reading["trait"][]) =>
  gathered(subjects, ({ reading }) => traits.map(reading));

/**
 * Judges the groups of which everything needed is known. The others may add to what is found, and take nothing from it:
 * for them the rule stays open. Nor is less certain for a group of which something else is not known, which is judged by
 * itself besides, nor for one that could be company but of which nobody knows anything.
 */
function judgeTogether(
  rule: PlanRule,
  runs: readonly Run[],
  plan: PlanSubjects,
  setting: Pick<Setting, "mayAsk" | "beside">,
): Judgement {
  const judgeIn = (within: PlanSubjects) => judgeOf(rule, runs, { ...setting, plan: within });
  const judgeable = ({ subjects }: PlanSubjects) =>
    subjects.filter(({ reading }) => !rule.needs?.from?.some((trait) => isMissing(reading(trait))));
  const judge = judgeIn(plan);
  const judgement = judge(judgeable(plan));
  const familiar = withoutStrangers(rule, plan);
  const judgeFamiliar = familiar === plan ? judge : judgeIn(familiar);
  const some = judgeable(familiar);
  const known = some.filter((subject) => !lacksUsed(rule, subject));
  const others = some.filter((subject) => !known.includes(subject));
  const certain = [
    ...(familiar === plan ? [] : [judgeFamiliar(some)]),
    ...(others.length > 0 ? [judgeFamiliar(known)] : []),
    ...others.map((subject) => judgeFamiliar([subject])),
  ];
  const least = certain.reduce((most, other) => Math.max(most, other.least), judgement.least);
  const hangsOn = gathered([judgement, ...certain], (each) => each.hangsOn);
  const missing = readingsFor(plan.subjects, rule.needs?.from ?? []).filter(isMissing);
  if (missing.length === 0) return { ...judgement, least, hangsOn };
  const utmost = utmostOf(rule, { ...setting, sides: plan.subjects, plan });
  return { ...leftOpen(rule, judgement, decidingQuestions(rule, missing), utmost, least), hangsOn };
}

/** The plan without those of whom nobody knows anything that the rule looks at. */
function withoutStrangers({ needs, uses }: PlanRule, plan: PlanSubjects): PlanSubjects {
  const looked = [...(needs?.from ?? []), ...(uses?.from ?? [])];
  const familiar = plan.subjects.filter(({ reading }) => looked.some((trait) => !isMissing(reading(trait))));
  if (familiar.length === plan.subjects.length) return plan;
  return {
    plan: { ...plan.plan, parties: familiar.map(({ party }) => party) },
    subjects: familiar.map(({ party }, index) => subjectOf(party, index)),
  };
}

/** Whether something of a group is missing that may lessen what a rule finds. */
const lacksUsed = ({ uses, mayAdd = [], mayRestrict = [] }: PlanRule, { reading }: Subject): boolean => {
  const onlyAdds = (trait: TraitPath) => mayAdd.includes(trait) && !mayRestrict.includes(trait);
  return uses?.from?.some((trait) => !onlyAdds(trait) && isMissing(reading(trait))) ?? false;
};
