import { frozen } from "../../frozen";
import type { Group, Plan } from "../../plan";
import { changedFacts, checkedPlanToFill, isSameParty, partiesOfGroups } from "../../plan/inner";
import type { AssessOptions } from "../assess/assess-options";
import { assessPlanWith } from "../assess/assess-plan";
import { whetherTheyMeet } from "../assess/judged-plan";
import type { Judgement } from "../engine/answers/judgement";
import { couldBe, type PlanSubjects, type Standing } from "../engine/answers/standing";
import { pairJudge } from "../engine/judge-pair";
import { planJudge } from "../engine/judge-plan";
import { decisiveTraits } from "../engine/rule/decisive-traits";
import { type AssessWith, isPairRule, type PlanRule, type Rule } from "../engine/rule/rule";
import { isKnownBy, type Subject, subjectOf } from "../engine/sides/subject";
import { outcomeOf } from "../verdict/outcome-of";
import type { Finding, Outcome } from "../verdict/verdict";
import { type AdoptedJudge, adoptedJudge, casesAmong, casesOf, isOfFew } from "./adopted-judge";

/** What a plan with a newcomer comes to on the adopted facts, as `assessPlan` has it. */
export interface Joined {
  readonly outcome: Outcome;
  /**
   * What the rules say of the newcomer, and of no group in particular, in the order of a verdict. Where one rules the
   * newcomer out, no more than the first of them says up to that.
   */
  readonly told: readonly Told[];
}

/** What a rule says on the adopted facts. */
export interface Told {
  readonly rule: string;
  readonly standing: Standing;
  /** As a verdict has it; only what the plan does not meet is a finding. */
  readonly finding: () => Finding;
}

/** A plan that groups may join, one at a time. */
export interface Joinable {
  /** As `assessPlan` has it; undefined where the adopted facts do not tell, and where nobody is there to judge. */
  readonly outcome: Outcome | undefined;
  /** What counts of all that the rules say of it, in the order of a verdict; undefined likewise. */
  readonly counting: readonly Standing[] | undefined;
  /**
   * The plan with a group that joins it; undefined where the adopted facts do not tell what comes of it.
   *
   * @param group - One that was checked.
   */
  readonly with: (group: Group) => Joined | undefined;
}

/**
 * Judges a plan that groups may join, on the adopted facts alone: of each newcomer only those rules judge that see it. What
 * it says is what `assessPlan` says. It does not tell where a trait is not known that leaves it undetermined, nor where
 * conditions exclude each other.
 *
 * @param plan - One that may still be without animals.
 * @throws InvalidInputError for what `assessPlan` refuses besides.
 */
export function joinable(plan: Plan, options: AssessOptions): Joinable {
  const by = assessPlanWith(options);
  const checked = checkedPlanToFill(plan);
  const given = { plan: checked, subjects: checked.parties.map(subjectOf) };
  const decisive = decisiveTraits(by.rules);
  if (!given.subjects.every((subject) => isKnownBy(subject, decisive))) return nothingTold;
  const there = new Set(checked.parties.map(({ animals }) => animals.id));
  const rules = by.rules.flatMap((rule) => beforeOf(rule, by, given) ?? []);
  if (rules.length < by.rules.length) return nothingTold;
  const blocking = rules.filter(({ rule }) => rule.mayYield.includes("blocking"));
  const all = rules.flatMap(({ cases }) => cases.flatMap(({ counting }) => counting));
  return {
    ...(isEmpty(given) ? nothingJudged : { outcome: outcomeOf(all), counting: all }),
    with: (group) => {
      const parties = there.has(group.species.id)
        ? partiesOfGroups([...plan.groups, group])
        : [...checked.parties, ...partiesOfGroups([group])];
      const subjects = parties.map((party, index) => {
        const known = given.subjects[index];
        return known && (known.party === party || isSameParty(known.party, party))
          ? known
          : subjectOf(party, index);
      });
      const joined = { plan: { ...checked, parties }, subjects };
      const isKnown = (subject: Subject) =>
        given.subjects[subject.index] === subject || isKnownBy(subject, decisive);
      return subjects.every(isKnown) ? joinedBy(joined, { rules, blocking, given, by }) : undefined;
    },
  };
}

const nothingJudged = { outcome: undefined, counting: undefined };

const nothingTold: Joinable = { outcome: undefined, counting: undefined, with: () => undefined };

const isEmpty = ({ subjects }: PlanSubjects): boolean => subjects.length === 0;

/** What is known before anybody joins. */
interface Before {
  readonly rules: readonly RuleBefore[];
  /** Those of the rules that may rule out a newcomer: where one does, no other has to be asked. */
  readonly blocking: readonly RuleBefore[];
  readonly given: PlanSubjects;
  readonly by: AssessWith;
}

interface RuleBefore {
  readonly rule: Rule;
  readonly judge: AdoptedJudge;
  readonly cases: readonly CaseBefore[];
  /** Whether what it says of some groups stands, whoever joins. */
  readonly stands: boolean;
}

interface CaseBefore {
  readonly sides: readonly Subject[];
  /** What counts of that which is said. */
  readonly counting: readonly Standing[];
}

/** What a rule says before anybody joins; undefined where it may rule out and cannot tell. */
function beforeOf(rule: Rule, by: AssessWith, given: PlanSubjects): RuleBefore | undefined {
  const judge = adoptedJudge(rule, by, given);
  const cases: CaseBefore[] = [];
  for (const sides of isEmpty(given) ? [] : casesOf(rule, given.subjects)) {
    const standing = judge(sides, given);
    if (standing === undefined) return undefined;
    const counting = standing.filter(counts);
    if (counting.length > 0) cases.push({ sides, counting });
  }
  const changed = changedFacts(given.plan, { ...given.plan, parties: [] });
  const hangsOnOthers = ({ counting }: CaseBefore) =>
    counting.some(({ condition }) => condition !== undefined && changed.has(condition.on));
  return { rule, judge, cases, stands: isOfFew(rule) && !cases.some(hangsOnOthers) };
}

/** What a rule says of a plan with a newcomer. */
interface Said extends Pick<Joined, "told"> {
  /** What counts of that which is said of others. */
  readonly others: readonly Standing[];
  /** Whether it rules the newcomer out: then not everything is said. */
  readonly rulesOut: boolean;
}

/** What comes of a plan with a newcomer, which is the last of its subjects; undefined where a rule cannot tell. */
function joinedBy(joined: PlanSubjects, before: Before): Joined | undefined {
  const newcomer = joined.subjects.at(-1) as Subject;
  const sayingOf = saidOf(joined, newcomer.index, before);
  const said = new Map<RuleBefore, Said>();
  for (const rule of before.blocking) {
    const saying = sayingOf(rule);
    if (saying === undefined) return undefined;
    if (saying.rulesOut) return { outcome: "unsuitable", told: saying.told };
    said.set(rule, saying);
  }
  const all = before.rules.flatMap((rule) => said.get(rule) ?? sayingOf(rule) ?? []);
  const told = all.flatMap((saying) => saying.told);
  const others = all.flatMap((saying) => saying.others);
  const outcome = outcomeOf([...others, ...told.map(({ standing }) => standing)]);
  if (outcome === undefined) return undefined;
  return { outcome, told };
}

/** What each rule says of a plan with a newcomer; undefined where it may rule out and cannot tell. */
function saidOf(
  joined: PlanSubjects,
  newcomer: number,
  { given, by }: Before,
): (rule: RuleBefore) => Said | undefined {
  const { subjects } = joined;
  const isAsBefore = (subject: Subject) => given.subjects[subject.index] === subject;
  const isNew = (sides: readonly Subject[]) => !sides.every(isAsBefore);
  const newCases = casesAmong(subjects, isNew);
  const kinStands = subjects.slice(0, newcomer).every(isAsBefore);
  return ({ rule, judge, cases, stands }) => {
    const told: Told[] = [];
    const others: Standing[] = [];
    for (const { sides, counting } of stands ? cases : [])
      if (kinStands || !isReplaced(sides, subjects)) others.push(...counting);
    for (const sides of stands ? newCases(rule) : casesOf(rule, subjects)) {
      const standing = judge(sides, joined);
      if (standing === undefined) return undefined;
      for (const one of standing) {
        if (!concerns(one, newcomer)) others.push(one);
        else told.push(toldBy(rule, one, standing, () => judgedWhole(rule, sides, joined, by)));
      }
      if (standing.some((one) => one.answer.weight === "blocking" && isAbout(one, newcomer)))
        return { told, others, rulesOut: true };
    }
    return { told, others, rulesOut: false };
  };
}

/** Whether others of a species have come to some, so that they are judged anew. */
const isReplaced = (sides: readonly Subject[], subjects: readonly Subject[]) =>
  sides.some((side) => subjects[side.index] !== side);

const isAbout = ({ from, to }: Standing, newcomer: number) => from === newcomer || to === newcomer;

const concerns = (standing: Standing, newcomer: number) =>
  standing.from === undefined || isAbout(standing, newcomer);

/** Whether an answer counts towards the outcome. */
const counts = ({ answer, condition }: Standing) =>
  answer.weight === "blocking" || condition !== undefined || couldBe(answer) !== undefined;

/** What a rule says of some groups of a plan, whatever is true. */
function judgedWhole(
  rule: Rule,
  sides: readonly Subject[],
  joined: PlanSubjects,
  { thresholds }: AssessWith,
): readonly Judgement[] {
  return isPairRule(rule)
    ? [pairJudge(rule, thresholds, joined)(sides, whetherTheyMeet(sides))]
    : planJudge(rule as PlanRule, thresholds, joined)(sides);
}

function toldBy(
  rule: Rule,
  standing: Standing,
  among: readonly Standing[],
  whole: () => readonly Judgement[],
): Told {
  const place = () => among.filter(({ state }) => state !== "met").indexOf(standing);
  return {
    rule: rule.id,
    standing,
    finding: () => frozen(whole().flatMap(({ findings }) => findings)[place()] as Finding),
  };
}
