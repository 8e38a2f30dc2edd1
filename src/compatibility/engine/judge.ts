import { OutsideDomainError, refusal } from "../../errors";
import { gathered } from "../../gathered";
import type { Basis } from "../../species";
import { traitDefinitions, weakestBasis } from "../../species/inner";
import { type Judgement, leftOpen, nothingAsked, silent } from "./answers/judgement";
import {
  disputedQuestions,
  individualQuestions,
  inputQuestions,
  missingQuestions,
  type OpenQuestion,
  traitQuestions,
  unstatedQuestions,
} from "./answers/questions";
import {
  couldBe,
  type LocatedAnswer,
  type PlanSubjects,
  type Standing,
  spanOf,
  standingOf,
  utmostOf,
} from "./answers/standing";
import type { AnyFinding, GivenCondition, PartyRole } from "./rule/finding";
import type { MeasureKinds } from "./rule/measures";
import { measured } from "./rule/measures";
import { isPairRule, type Rule, type RuleAnswer, type RuleWay } from "./rule/rule";
import { gravest, gravity, type Weight } from "./rule/weight";
import { isAskedOf } from "./sides/is-asked-of";
import { onceForEach } from "./sides/once-for-each";
import { basisOf, isMissing, type Reading, type Subject } from "./sides/subject";
import { unknownTrait, type View, viewOf } from "./sides/view";
import { type ReadTrait, type Worlds, worldReader } from "./worlds";

/** A rule on what it sees of its sides. */
export type Run = (views: readonly View[]) => RuleAnswer<RuleWay, Weight, MeasureKinds>;

/** What a rule judges in. */
export interface Setting {
  readonly plan?: PlanSubjects | undefined;
  /** The utmost that the rule may ask for where it cannot tell. */
  readonly mayAsk: readonly GivenCondition[];
  /** What the runs rest on besides what they read. */
  readonly beside?: readonly Reading[] | undefined;
}

/** What a rule is judged on. */
interface Case extends Setting {
  readonly sides: readonly Subject[];
  readonly takesPlace?: TakesPlace | undefined;
}

/** Whether there is anything to judge, where that hangs on what is read. */
export type TakesPlace = (read: ReadTrait) => boolean;

/** What a rule answers in one world. */
interface WorldAnswer {
  readonly standing: readonly Standing[];
  /** What was read to tell more, and changes no weight. */
  readonly told: readonly Reading[];
  /** A trait that the rule needs is not known. */
  readonly unknown: boolean;
  /** An equation does not hold there. */
  readonly outside: boolean;
}

const nothing: WorldAnswer = { standing: [], told: [], unknown: false, outside: false };
const unknown: WorldAnswer = { ...nothing, unknown: true };
const outside: WorldAnswer = { ...nothing, outside: true };

/** A side as a rule sees it. */
interface SeenSide {
  readonly view: View;
  /** What nobody knows of the traits without which the rule cannot judge. */
  readonly lacking: readonly Reading[];
}

/**
 * How a rule judges what it sees of its sides.
 *
 * @param runs - The rule on the likely stock first, then on each other stock that may be.
 */
export function judgeOf(
  rule: Rule,
  runs: readonly Run[],
  setting: Setting,
): (sides: readonly Subject[], takesPlace?: TakesPlace) => Judgement {
  const { read, inEveryWorld } = worldReader();
  let told: Reading[] = [];
  const tell: ReadTrait = (reading) => {
    told.push(reading);
    return reading.possible[0]?.value;
  };
  const seenAs = (role: PartyRole) =>
    onceForEach(
      (subject): SeenSide => ({
        view: viewOf(rule, role, subject, read, tell),
        lacking: lackedOf(rule, role, subject),
      }),
    );
  const [fromOf, toOf] = [seenAs("from"), seenAs("to")];
  const seenAt = isPairRule(rule)
    ? (side: Subject, index: number) => (index === 0 ? fromOf(side) : toOf(side))
    : fromOf;
  const { plan, mayAsk, beside: weighed } = setting;
  let given: Case = { ...setting, sides: [] };
  let views: readonly View[] = [];
  const [likely, ...ends] = runs.map((run) => {
    const answers = () => run(views);
    return () => {
      if (told.length > 0) told = [];
      if (given.takesPlace?.(read) === false) return nothing;
      const answer = answerOf(rule, answers, given, read);
      return told.length > 0 && answer.standing.length > 0 ? { ...answer, told } : answer;
    };
  });
  return (sides, takesPlace) => {
    if (!isAskedOf(rule, sides)) return silent;
    given = { sides, plan, mayAsk, beside: weighed, takesPlace };
    const seen = sides.map(seenAt);
    const lacking = lackedBy(seen);
    if (lacking.some(({ trait }) => traitDefinitions[trait].essential))
      return leftOpen(rule, silent, missingQuestions(rule, lacking), utmostOf(rule, given));
    views = seen.map(({ view }) => view);
    if (!likely) return silent;
    const worlds = ends.reduce((known, end) => beside(known, inEveryWorld(end)), inEveryWorld(likely));
    return judged(rule, given, worlds, lacking);
  };
}

/** What nobody knows of the traits without which a rule cannot judge a side. */
function lackedOf({ needs }: Rule, role: PartyRole, { reading }: Subject): readonly Reading[] {
  const lacking: Reading[] = [];
  for (const trait of needs?.[role] ?? []) {
    const needed = reading(trait);
    if (isMissing(needed)) lacking.push(needed);
  }
  return lacking;
}

/** What nobody knows of the traits without which a rule cannot judge. Without an essential one it is not even tried. */
function lackedBy(sides: readonly SeenSide[]): readonly Reading[] {
  return sides.every(({ lacking }) => lacking.length === 0) ? [] : gathered(sides, ({ lacking }) => lacking);
}

/** What a rule answers, and how that stands. */
export function answerOf(
  rule: Rule,
  run: () => ReturnType<Run>,
  { sides, plan }: Pick<Case, "sides" | "plan">,
  read: ReadTrait,
): WorldAnswer {
  try {
    const answers = run();
    if (answers === "unknown") return unknown;
    if (!Array.isArray(answers))
      throw refusal(`rules.${rule.id}`, 'a list of findings, or "unknown"', answers);
    if (answers.length === 0) return nothing;
    const standing = answers.map((answer: LocatedAnswer) => standingOf(rule, answer, sides, plan, read));
    return { standing, told: [], unknown: false, outside: false };
  } catch (error) {
    if (error === unknownTrait) return unknown;
    if (error instanceof OutsideDomainError) return outside;
    throw error;
  }
}

/** The likely answers, with those for another end of the stock among the others. */
function beside(
  likely: Worlds<WorldAnswer>,
  { adopted, others, read, complete }: Worlds<WorldAnswer>,
): Worlds<WorldAnswer> {
  return {
    adopted: likely.adopted,
    others: [...likely.others, adopted, ...others],
    read: [...likely.read, ...beyond(likely.read, read)],
    complete: likely.complete && complete,
  };
}

/** What was read and is not among what was read before. */
const beyond = (before: readonly Reading[], read: readonly Reading[]) =>
  read.filter((reading) => !before.includes(reading));

function judged(
  rule: Rule,
  given: Case,
  worlds: Worlds<WorldAnswer>,
  lacking: readonly Reading[],
): Judgement {
  const { adopted, others, read, complete } = worlds;
  const isCertain = complete && !given.beside && !read.some(isMissing);
  if (isCertain && saysNothing(adopted) && others.every(saysNothing)) return silent;
  const answers = [adopted, ...others].map(({ answer }) => answer);
  const judgement = bounded(rule, worlds, given);
  const isUnknown = answers.some((answer) => answer.unknown);
  const isOutside = answers.some((answer) => answer.outside);
  if (complete && !isUnknown && !isOutside) return judgement;
  const questions = [
    ...(isUnknown ? unknownQuestions(rule, given, [...lacking, ...beyond(lacking, read)]) : []),
    ...(isOutside ? [outsideDomain(rule, given)] : []),
    ...(complete ? [] : disputedQuestions(rule, read)),
  ];
  return leftOpen(rule, judgement, questions, utmostOf(rule, given));
}

const saysNothing = ({ answer }: { readonly answer: WorldAnswer }) => answer === nothing;

/** Why a rule cannot tell: a trait that nobody knows; where it lacks none, what the plan does not say. */
function unknownQuestions(rule: Rule, { plan }: Case, read: readonly Reading[]): readonly OpenQuestion[] {
  const missing = missingQuestions(rule, read);
  return missing.length > 0 || !plan ? missing : unstatedQuestions(rule, plan.plan);
}

/** Some worlds lie where an equation does not hold. */
function outsideDomain(rule: Rule, { sides: [side] }: Case): OpenQuestion {
  const of = side && { of: side.index };
  return { rule: rule.id, ...of, reason: "outside-domain", couldBe: gravest(rule.mayYield) };
}

/** The findings of the adopted world, with their bounds over all worlds. */
function bounded(rule: Rule, { adopted, others, read }: Worlds<WorldAnswer>, given: Case): Judgement {
  const { standing, told } = adopted.answer;
  const worlds = [adopted, ...others];
  const { beside = none } = given;
  const lacking = read.filter(isMissing);
  const mayAdd = [...lacking, ...beside.filter(isMissing)].some((reading) => adds(rule, reading));
  const mayRestrict = lacking.some((reading) => restricts(rule, reading));
  const isSilent = worlds.every(({ answer }) => answer.standing.length === 0);
  if (isSilent && !mayAdd && !mayRestrict) return silent;
  const used = [...read, ...beyond(read, beside)];
  const onlyAdds = lacking.every((reading) => adds(rule, reading) && !restricts(rule, reading));
  const span = spanOver(worlds);
  const least = onlyAdds ? span.least : 0;
  const open = mayRestrict ? Math.max(span.greatest, gravity.restricting) : span.greatest;
  const greatest = mayAdd ? gravity[gravest(rule.mayYield)] : open;
  const complete = completing(rule, told.length > 0 ? [...used, ...beyond(used, told)] : used);
  const asking = worlds.map(({ choices, answer }) => ({ choices, asks: askedIn(answer) }));
  const unmet = standing.filter(({ state }) => state !== "met");
  return {
    findings: unmet.map(complete),
    met:
      unmet.length === standing.length ? [] : standing.filter(({ state }) => state === "met").map(complete),
    open: [
      ...traitQuestions(rule, used, { least, greatest }),
      ...inputQuestions(rule, standing),
      ...individualQuestions(rule, standing),
    ],
    least,
    greatest,
    undetermined: standing.some(({ answer }) => couldBe(answer)),
    worlds: onlyAdds ? asking : [...asking, nothingAsked],
    mayAsk: mayAdd || mayRestrict ? utmostOf(rule, given) : [],
    hangsOn: asking.length === 1 ? (asking[0]?.asks ?? []) : gathered(asking, ({ asks }) => asks),
  };
}

const none: readonly Reading[] = [];

/** Whether a value of a trait may only ask for more than its absence does. */
const adds = ({ mayAdd = [] }: Rule, { trait }: Reading): boolean => mayAdd.includes(trait);

/** Whether a value of a trait may restrict to something else than its absence does. */
const restricts = ({ mayRestrict = [] }: Rule, { trait }: Reading): boolean => mayRestrict.includes(trait);

/** The gravity at least and at most over some worlds. */
function spanOver(worlds: readonly { readonly answer: WorldAnswer }[]) {
  let [least, greatest] = [Number.POSITIVE_INFINITY, 0];
  for (const { answer } of worlds) {
    const span = spanOf(answer.standing);
    least = Math.min(least, span.least);
    greatest = Math.max(greatest, span.greatest);
  }
  return { least, greatest };
}

/** What is asked for in a world. */
const askedIn = ({ standing }: WorldAnswer) =>
  standing.map(({ condition }) => condition).filter((condition) => condition !== undefined);

type FieldsOf<Finding> = Finding extends unknown ? keyof Finding : never;
/** A finding that does not say everything yet. */
type Unfinished = { [Field in FieldsOf<AnyFinding>]?: unknown };

/** Makes an answer a finding: by which rule, about whom, and how well it is supported by the traits that were read. */
function completing(rule: Rule, read: readonly Reading[]) {
  const { id, measures: kinds = {} } = rule;
  const basis = basisOfAll(read);
  const traits = [...new Set(read.map(({ trait }) => trait))];
  if (rule.way === "all-groups") traits.sort(); // In an order that hangs on no plan's.
  return ({ answer, from, to, condition, instead }: Standing): AnyFinding => {
    const { weight, measures, watchFor } = answer;
    const uncertain = couldBe(answer);
    const finding: Unfinished = { rule: id, weight };
    if (from !== undefined) finding.from = from;
    if (to !== undefined) finding.to = to;
    if (measures) finding.measures = measured(kinds, measures);
    if (watchFor) finding.watchFor = watchFor;
    if (condition) finding.condition = condition;
    if (instead) finding.instead = instead;
    if (uncertain) finding.couldBe = uncertain;
    finding.basis = basis;
    finding.traits = traits;
    return finding as AnyFinding;
  };
}

/** The weakest basis of what was read and is known. */
function basisOfAll(read: readonly Reading[]): Basis {
  const bases: Basis[] = [];
  for (const reading of read) {
    const basis = basisOf(reading);
    if (basis) bases.push(basis);
  }
  return bases.length > 0 ? weakestBasis(bases) : "common-practice";
}
