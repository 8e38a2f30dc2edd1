import { gathered } from "../../gathered";
import { once } from "../../made-once";
import type { Condition } from "../../plan";
import { type CheckedParty, type CheckedPlan, changedFacts, isSameParty, meetsAlike } from "../../plan/inner";
import type { Judgement } from "../engine/answers/judgement";
import type { PlanSubjects } from "../engine/answers/standing";
import { pairJudge } from "../engine/judge-pair";
import { planJudge } from "../engine/judge-plan";
import { type AssessWith, isPairRule, type PlanRule, type Rule } from "../engine/rule/rule";
import { type Subject, subjectOf } from "../engine/sides/subject";
import type { ReadTrait } from "../engine/worlds";
import type { ThresholdValues } from "../threshold-values";
import { type Said, saidBy } from "../verdict/said";

/** A plan with what every rule says of it. */
export interface JudgedPlan extends PlanSubjects {
  /** By rule. */
  readonly rules: readonly JudgedRule[];
  /** What each of them says. */
  readonly said: readonly Said[];
}

/** What a rule says of a plan. */
interface JudgedRule {
  readonly cases: readonly JudgedCase[];
  readonly said: Said;
  /** What the conditions are about to which it held the plan. */
  readonly heldTo: ReadonlySet<string>;
  /** What it says of some groups. */
  readonly of: (sides: readonly Subject[]) => JudgedCase | undefined;
}

/** What a rule says of some groups of a plan. */
interface JudgedCase {
  readonly sides: readonly Subject[];
  readonly judgements: readonly Judgement[];
}

/**
 * Judges a plan by every rule.
 *
 * @param before - A plan judged by the same rules and thresholds: what reads nothing that is different there is not
 * judged again.
 */
export function judgedPlan(plan: CheckedPlan, by: AssessWith, before?: JudgedPlan): JudgedPlan {
  const subjects = subjectsOf(plan.parties, before?.subjects ?? []);
  const given = { plan, subjects };
  const changed = before ? changedFacts(before.plan, plan) : new Set<string>();
  const isMetAsBefore = (condition: Condition) =>
    !changed.has(condition.on) || (before && meetsAlike(condition, before.plan, plan));
  const isAsBefore = ({ judgements }: JudgedCase) =>
    judgements.every((judgement) => judgement.hangsOn.every(isMetAsBefore));
  const sidesOf = sidesAmong(subjects);
  const rules = by.rules.map((rule, index) => {
    const judge = judgeBy(rule, by.thresholds, given);
    const judged = (sides: readonly Subject[]): JudgedCase => ({ sides, judgements: judge(sides) });
    const known = before?.rules[index];
    if (!known || rule.reads?.some((name) => changed.has(name))) return judgedRule(sidesOf(rule).map(judged));
    const isHeldToOthers = [...known.heldTo].some((fact) => changed.has(fact));
    const stands = (one: JudgedCase) => !isHeldToOthers || isAsBefore(one);
    if (subjects === before.subjects)
      return !isHeldToOthers || known.cases.every(isAsBefore)
        ? known
        : judgedRule(known.cases.map((one) => (isAsBefore(one) ? one : judged(one.sides))));
    return judgedRule(
      sidesOf(rule).map((sides) => {
        const one = known.of(sides);
        return one && stands(one) ? one : judged(sides);
      }),
    );
  });
  return { ...given, rules, said: rules.map(({ said }) => said) };
}

function judgedRule(cases: readonly JudgedCase[]): JudgedRule {
  const judgements: Judgement[] = [];
  for (const one of cases) for (const judgement of one.judgements) judgements.push(judgement);
  const said = saidBy(judgements);
  const heldTo = new Set<string>();
  for (const { hangsOn } of said.judgements) for (const { on } of hangsOn) heldTo.add(on);
  const find = once(() => finder(cases));
  return { cases, said, heldTo, of: (sides) => find()(sides) };
}

/** The parties as subjects: those that stand where they stood before and are the same are the same subjects. */
function subjectsOf(parties: readonly CheckedParty[], before: readonly Subject[]): readonly Subject[] {
  const subjects = parties.map((party, index) => {
    const known = before[index];
    return known && isSameParty(known.party, party) ? known : subjectOf(party, index);
  });
  const isUnchanged =
    subjects.length === before.length && subjects.every((each, index) => each === before[index]);
  return isUnchanged ? before : subjects;
}

/** How a rule judges some groups of a plan; that is made out when it first judges. */
function judgeBy(
  rule: Rule,
  thresholds: ThresholdValues,
  given: PlanSubjects,
): (sides: readonly Subject[]) => readonly Judgement[] {
  if (isPairRule(rule)) {
    const judge = once(() => pairJudge(rule, thresholds, given));
    return (sides) => [judge()(sides, whetherTheyMeet(sides))];
  }
  const judge = once(() => planJudge(rule as PlanRule, thresholds, given));
  return (sides) => judge()(sides);
}

/** The case of some sides, among those that were judged: of one or two of them, or the only one. */
function finder(cases: readonly JudgedCase[]): JudgedRule["of"] {
  const [only, ...others] = cases;
  if (others.length === 0) return (sides) => (only && areSame(only.sides, sides) ? only : undefined);
  const byPlaces: JudgedCase[][] = [];
  const placesOf = ([one, other = one]: readonly Subject[]) => [one?.index ?? 0, other?.index ?? 0] as const;
  for (const judged of cases) {
    const [one, other] = placesOf(judged.sides);
    byPlaces[one] ??= [];
    byPlaces[one][other] = judged;
  }
  return (sides) => {
    const [one, other] = placesOf(sides);
    const found = byPlaces[one]?.[other];
    return found && areSame(found.sides, sides) ? found : undefined;
  };
}

const areSame = (some: readonly Subject[], others: readonly Subject[]): boolean =>
  some.length === others.length && some.every((one, at) => one === others[at]);

/** Of whom rules judge among some subjects, made out once for all rules of a way. */
function sidesAmong(subjects: readonly Subject[]): (rule: Rule) => readonly (readonly Subject[])[] {
  const byWay = new Map<string, readonly (readonly Subject[])[]>();
  return (rule) => {
    const way = rule.sums ? "summing" : rule.way;
    const known = byWay.get(way) ?? sidesOf(rule, subjects);
    byWay.set(way, known);
    return known;
  };
}

/** Of whom a rule judges: of each two, of each group, or of all of them where it looks at all. */
export function sidesOf({ way, sums }: Rule, subjects: readonly Subject[]): readonly (readonly Subject[])[] {
  if (way === "mutual" || way === "each-way") return encounters(subjects, way);
  return way === "each-group" && !sums ? subjects.map((subject) => [subject]) : [subjects];
}

/** Who meets whom: every two groups, once or each way, and each way also a group with itself, unless it is one and stays so. */
function encounters(
  subjects: readonly Subject[],
  way: "mutual" | "each-way",
): readonly (readonly [Subject, Subject])[] {
  return gathered(subjects, (from) =>
    subjects
      .filter((to) => (way === "mutual" ? from.index < to.index : from !== to || mayBeSeveral(from)))
      .map((to) => [from, to] as const),
  );
}

/** Whether there are several of a group, or it is one of a kind that is not known to live alone: more may be asked for. */
function mayBeSeveral({ animals, standing }: Subject): boolean {
  if (animals.kin.count !== 1) return (animals.count ?? 1) > 1;
  const living = standing("social.living");
  return living.length === 0 || living.some((way) => way !== "alone");
}

/**
 * Whether one animal meets others of its group, which it does only if its kind does not live alone; undefined where that is
 * certain, and of all other sides.
 */
export function whetherTheyMeet(sides: readonly Subject[]) {
  const from = sides[0];
  if (!from || from !== sides[1] || from.animals.kin.count !== 1) return undefined;
  const living = from.reading("social.living");
  const isCertain = living.possible.length > 0 && living.possible.every(({ value }) => value !== "alone");
  return isCertain ? undefined : (read: ReadTrait) => read(living) !== "alone";
}
