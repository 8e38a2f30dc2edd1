import { frozen } from "../frozen";
import type { Group, Plan } from "../plan";
import { changedFacts, checkedPlan } from "../plan/inner";
import { essentialTraits, type TraitPath } from "../species";
import { stocksOf, traitsWeighed } from "./animals/stock";
import type { AssessOptions, AssessWith } from "./assess-options";
import { usualRules } from "./assess-plan";
import { planRulesOf } from "./assess-plan-by";
import { clashes } from "./clashes";
import { answerOf } from "./engine/judge";
import { pairJudge } from "./engine/judge-pair";
import { planJudge } from "./engine/judge-plan";
import type { Judgement } from "./engine/judgement";
import { adopted } from "./engine/plain-view";
import type { OpenQuestion } from "./engine/questions";
import type { PartyRole } from "./engine/rule/finding";
import { isPairRule, type PlanRule, type Rule } from "./engine/rule/rule";
import { decidingBy, readingsOf } from "./engine/seen";
import { couldBe, type PlanSubjects, type Standing } from "./engine/standing";
import { isMissing, type Subject, subjectOf } from "./engine/subject";
import { type View, viewOf } from "./engine/view";
import { meeting, sidesOf } from "./judged-plan";
import type { Finding, Outcome } from "./verdict";

/** What a plan with a newcomer comes to on the adopted facts, as `assessPlan` has it. */
export interface Joined {
  readonly outcome: Outcome;
  /**
   * What the rules say of the newcomer, and of no group in particular, in the order of a verdict. Where something rules the
   * newcomer out, no more than up to that.
   */
  readonly told: readonly Told[];
  /**
   * What is open of the newcomer since nobody knows a trait; undefined where more than these rules would have to be asked.
   */
  readonly missing: () => readonly OpenQuestion[] | undefined;
}

/** What a rule says on the adopted facts. */
export interface Told {
  readonly rule: string;
  readonly standing: Standing;
  /** As a verdict has it; only what the plan does not meet is a finding. */
  readonly finding: () => Finding;
}

/** The traits that conditions look at, whichever rule asks for them. */
const lookedAtByConditions: readonly TraitPath[] = [
  "social.settles",
  "space.zones",
  "social.group",
  "predation.eats",
  "diet.foods",
  "diet.reach",
  "diet.light",
  "appearance.longFins",
  "space.hides",
];

/** A plan that groups may join, one at a time. */
export interface Joinable {
  /** As `assessPlan` has it; undefined where the adopted facts do not tell. */
  readonly outcome: Outcome | undefined;
  /** The plan with a group that joins it; undefined where the adopted facts do not tell what comes of it. */
  readonly with: (group: Group) => Joined | undefined;
}

/**
 * Judges a plan that groups may join, on the adopted facts alone: of each newcomer only those rules judge that see it. What
 * it says is what `assessPlan` says. It does not tell where an essential trait is not known, where the plan has animals of
 * the species already, and where conditions exclude each other.
 *
 * @throws InvalidInputError for what `assessPlan` refuses.
 */
export function joinable(plan: Plan, options: AssessOptions): Joinable {
  const by = planRulesOf(usualRules(options), options);
  const checked = checkedPlan(plan);
  const subjects = checked.parties.map(subjectOf);
  const there = new Set(subjects.map(({ animals }) => animals.id));
  const given = { plan: checked, subjects };
  const judges = by.rules.map((rule) => judgeOf(rule, by, given));
  const isKnown = subjects.every(isComplete);
  const before = isKnown
    ? judges.map(({ rule, judge }) => casesOf(rule, subjects).map((sides) => judge(sides, given)))
    : [];
  return {
    outcome: isKnown ? outcomeOf(before.flat(2)) : undefined,
    with: (group) => {
      if (!isKnown || there.has(group.species.id)) return undefined;
      const [party] = checkedPlan({ ...plan, groups: [group] }).parties;
      const newcomer = party && subjectOf(party, subjects.length);
      if (!newcomer || !isComplete(newcomer)) return undefined;
      const joined = {
        plan: { ...checked, parties: [...checked.parties, newcomer.party] },
        subjects: [...subjects, newcomer],
      };
      return joinedBy(newcomer, joined, { judges, before, by, changed: changedFacts(checked, joined.plan) });
    },
  };
}

/** What is known before anybody joins. */
interface Before {
  readonly judges: readonly AdoptedJudge[];
  /** By rule and case. */
  readonly before: readonly (readonly (readonly Standing[])[])[];
  readonly by: AssessWith;
  /** What a newcomer changes in the plan. */
  readonly changed: ReadonlySet<string>;
}

function joinedBy(
  newcomer: Subject,
  joined: PlanSubjects,
  { judges, before, by, changed }: Before,
): Joined | undefined {
  const told: Told[] = [];
  const others: Standing[] = [];
  for (const [index, { rule, judge }] of judges.entries()) {
    const known = before[index] ?? [];
    const isAsBefore = isOfFew(rule) && !known.some((standing) => standing.some(hangsOn(changed)));
    if (isAsBefore) others.push(...known.flat());
    for (const sides of casesOf(rule, joined.subjects)) {
      if (isAsBefore && !sides.includes(newcomer)) continue;
      const standing = judge(sides, joined);
      for (const one of standing) {
        if (!concerns(one, newcomer)) others.push(one);
        else told.push(toldBy(rule, one, standing, () => judgedWhole(rule, sides, joined, by)));
      }
      if (standing.some((one) => one.answer.weight === "blocking" && isAbout(one, newcomer)))
        return { outcome: "unsuitable", told, missing: () => undefined };
    }
  }
  const outcome = outcomeOf([...others, ...told.map(({ standing }) => standing)]);
  if (outcome === undefined) return undefined;
  return { outcome, told, missing: () => missingOf(newcomer, joined, by) };
}

const isComplete = ({ reading }: Subject): boolean => !essentialTraits.map(reading).some(isMissing);

const isAbout = ({ from, to }: Standing, { index }: Subject) => from === index || to === index;

const concerns = (standing: Standing, newcomer: Subject) =>
  standing.from === undefined || isAbout(standing, newcomer);

/** Whether a rule looks at one group or at two, and not at the stock. */
const isOfFew = (rule: Rule) => isPairRule(rule) || (rule.way === "each-group" && rule.weighs !== true);

const hangsOn =
  (changed: ReadonlySet<string>) =>
  ({ condition }: Standing) =>
    condition !== undefined && changed.has(condition.on);

/** How a rule judges on the adopted facts. */
interface AdoptedJudge {
  readonly rule: Rule;
  readonly judge: (sides: readonly Subject[], plan: PlanSubjects) => readonly Standing[];
}

function judgeOf(rule: Rule, { thresholds: values }: AssessWith, { plan }: PlanSubjects): AdoptedJudge {
  const { thresholds } = decidingBy(rule, values);
  const [fromOf, toOf] = [seenAs(rule, "from"), seenAs(rule, "to")];
  const seen = { plan: readingsOf(rule, plan), thresholds };
  const see = (sides: readonly Subject[], { subjects }: PlanSubjects): object => {
    const [from, to] = sides;
    if (isPairRule(rule)) return { from: from && fromOf(from), to: to && toOf(to), thresholds };
    const stock = rule.weighs ? stocksOf(subjects)[0] : undefined;
    return {
      ...seen,
      stock,
      ...(rule.way === "all-groups" ? { groups: sides.map(fromOf) } : { from: from && fromOf(from) }),
    };
  };
  return {
    rule,
    judge: (sides, given) => {
      if (isPairRule(rule) && meeting(sides)?.(adopted) === false) return [];
      return answerOf(rule, () => rule.judge(see(sides, given) as never), { sides, plan: given }, adopted)
        .standing;
    },
  };
}

/** Whom a rule judges. All together are those of whom everything needed is known. */
function casesOf(rule: Rule, subjects: readonly Subject[]): readonly (readonly Subject[])[] {
  if (isPairRule(rule)) return sidesOf(rule, subjects);
  if (rule.way === "once") return [[]];
  if (rule.way === "each-group") return subjects.map((subject) => [subject]);
  const needs = rule.needs?.from ?? [];
  return [subjects.filter(({ reading }) => !needs.map(reading).some(isMissing))];
}

/** Subjects as a rule sees them on one side, each made out once. */
function seenAs(rule: Rule, role: PartyRole): (subject: Subject) => View {
  const views = new WeakMap<Subject, View>();
  return (subject) => {
    const view = views.get(subject) ?? viewOf(rule, role, subject, adopted, adopted);
    views.set(subject, view);
    return view;
  };
}

/** What answers come to; undefined where they ask for conditions that exclude each other. */
function outcomeOf(standing: readonly Standing[]): Outcome | undefined {
  if (standing.some(({ answer }) => answer.weight === "blocking")) return "unsuitable";
  const asking = standing.flatMap(({ condition, state }) => (condition ? [{ condition, state }] : []));
  const isUnmet = ({ state }: Pick<Standing, "state">) => state !== "met";
  const asksForMore = asking.some(isUnmet);
  if (asksForMore && clashes(asking).some((clash) => clash.flat().some(isUnmet))) return undefined;
  if (standing.some(({ answer }) => couldBe(answer))) return "undetermined";
  return asksForMore ? "conditional" : "suitable";
}

/** What a rule says of some groups of a plan, whatever is true. */
function judgedWhole(
  rule: Rule,
  sides: readonly Subject[],
  joined: PlanSubjects,
  { thresholds }: AssessWith,
): readonly Judgement[] {
  return isPairRule(rule)
    ? [pairJudge(rule, thresholds, joined)(sides, meeting(sides))]
    : planJudge(rule as PlanRule, thresholds, joined)(sides);
}

function toldBy(
  rule: Rule,
  standing: Standing,
  among: readonly Standing[],
  whole: () => readonly Judgement[],
): Told {
  const place = among.filter(({ state }) => state !== "met").indexOf(standing);
  return {
    rule: rule.id,
    standing,
    finding: () => frozen(whole().flatMap(({ findings }) => findings)[place] as Finding),
  };
}

/** What is open of a newcomer since nobody knows a trait. */
function missingOf(
  newcomer: Subject,
  joined: PlanSubjects,
  by: AssessWith,
): readonly OpenQuestion[] | undefined {
  const lacks = (trait: TraitPath) => isMissing(newcomer.reading(trait));
  if (lookedAtByConditions.some(lacks)) return undefined;
  const looksAt = ({ needs, uses, weighs }: Rule) =>
    [needs?.from, needs?.to, uses?.from, uses?.to].some((traits) => traits?.some(lacks)) ||
    (weighs && traitsWeighed([newcomer]).some(({ trait }) => lacks(trait)));
  return by.rules
    .filter(looksAt)
    .flatMap((rule) =>
      casesOf(rule, joined.subjects)
        .filter((sides) => sides.includes(newcomer) || !isOfFew(rule))
        .flatMap((sides) => judgedWhole(rule, sides, joined, by)),
    )
    .flatMap(({ open }) => open)
    .filter(({ reason, of }) => reason === "missing" && of === newcomer.index);
}
