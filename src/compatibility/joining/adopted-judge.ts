import { endsOf } from "../animals/summing";
import { sidesOf, whetherTheyMeet } from "../assess/judged-plan";
import { toldOf } from "../engine/adopted";
import type { PlanSubjects, Standing } from "../engine/answers/standing";
import { answerOf } from "../engine/answers/world-answer";
import { decidingBy, readingsOf } from "../engine/rule/deciding";
import type { PartyRole } from "../engine/rule/finding";
import { type AssessWith, isPairRule, type Rule } from "../engine/rule/rule";
import { seenSums } from "../engine/rule/seen-sums";
import { isAskedOf } from "../engine/sides/is-asked-of";
import { onceForEach } from "../engine/sides/once-for-each";
import { adopted, plainView } from "../engine/sides/plain-view";
import { isMissing, type Subject } from "../engine/sides/subject";
import { type View, viewOf } from "../engine/sides/view";

/**
 * How a rule judges some groups of a plan on the adopted facts, whoever else joins it; undefined where it may rule out and
 * cannot tell, since a trait is not known.
 */
export type AdoptedJudge = (sides: readonly Subject[], plan: PlanSubjects) => readonly Standing[] | undefined;

/**
 * A rule that judges a plan and those that come of it by adding groups.
 *
 * @param staying - Who is seen again and again.
 */
export function adoptedJudge(
  rule: Rule,
  { thresholds: values }: AssessWith,
  { plan, subjects: staying }: PlanSubjects,
): AdoptedJudge {
  const { thresholds } = decidingBy(rule, values);
  const [fromOf, toOf] = [seenAs(rule, "from", staying), seenAs(rule, "to", staying)];
  const seen = readingsOf(rule, plan);
  const likelySums = (subjects: readonly Subject[]) =>
    seenSums(rule, rule.sums && endsOf(rule.sums)(subjects)[0]);
  const see = ([from, to]: readonly Subject[], { subjects }: PlanSubjects): object =>
    from && to
      ? { from: fromOf(from), to: toOf(to), thresholds }
      : { plan: seen, thresholds, ...likelySums(subjects), from: from && fromOf(from) };
  const seeAll = (sides: readonly Subject[], { subjects }: PlanSubjects): object => ({
    plan: seen,
    thresholds,
    ...likelySums(subjects),
    groups: sides.map(fromOf),
  });
  const seenBy = rule.way === "all-groups" ? seeAll : see;
  return (sides, given) => {
    if (!isAskedOf(rule, sides) || (isPairRule(rule) && whetherTheyMeet(sides)?.(adopted) === false))
      return [];
    const judge = () => rule.judge(seenBy(sides, given) as never);
    return toldOf(rule, sides, answerOf(rule, judge, { sides, plan: given }, adopted));
  };
}

/** Whether a rule looks at one group or at two, and not at a sum of all. */
export const isOfFew = ({ way, sums }: Rule): boolean =>
  way === "mutual" || way === "each-way" || (way === "each-group" && !sums);

/** Whom rules judge among some subjects, those that meet each other made out once for all rules of a way. */
export function casesAmong(
  subjects: readonly Subject[],
  isMeant: (sides: readonly Subject[]) => boolean,
): (rule: Rule) => readonly (readonly Subject[])[] {
  const pairs = new Map<Rule["way"], readonly (readonly Subject[])[]>();
  return (rule) => {
    if (!isOfFew(rule)) return casesOf(rule, subjects);
    const known = pairs.get(rule.way) ?? casesOf(rule, subjects).filter(isMeant);
    pairs.set(rule.way, known);
    return known;
  };
}

/** Whom a rule judges. All together are those of whom everything needed is known. */
export function casesOf(rule: Rule, subjects: readonly Subject[]): readonly (readonly Subject[])[] {
  if (isPairRule(rule)) return sidesOf(rule, subjects);
  if (rule.way === "once") return [[]];
  if (rule.way === "each-group") return subjects.map((subject) => [subject]);
  const needs = rule.needs?.from ?? [];
  return [subjects.filter(({ reading }) => !needs.some((trait) => isMissing(reading(trait))))];
}

/** Subjects as a rule sees them on one side, the last of each place made out once; held in the view of those that stay. */
const seenAs = (rule: Rule, role: PartyRole, staying: readonly Subject[]): ((subject: Subject) => View) =>
  onceForEach((subject) =>
    staying[subject.index] === subject
      ? plainView(rule, role, subject)
      : viewOf(rule, role, subject, adopted, adopted),
  );
