import { OutsideDomainError, refusal } from "../../errors";
import { traitDefinitions, weakestBasis } from "../../species/inner";
import { type Judgement, leftOpen, nothingAsked, silent } from "./judgement";
import {
  disputedQuestions,
  individualQuestions,
  inputQuestions,
  missingQuestions,
  type OpenQuestion,
  traitQuestions,
  unstatedQuestions,
} from "./questions";
import type { AnyFinding, GivenCondition, PartyRole } from "./rule/finding";
import type { MeasureKinds } from "./rule/measures";
import { measured } from "./rule/measures";
import type { Rule, RuleAnswer, RuleWay } from "./rule/rule";
import { gravest, gravity, type Weight } from "./rule/weight";
import {
  couldBe,
  type LocatedAnswer,
  type PlanSubjects,
  type Standing,
  spanOf,
  standingOf,
  utmostOf,
} from "./standing";
import { basisOf, isMissing, type Reading, type Subject } from "./subject";
import { unknownTrait, type View, viewOf } from "./view";
import { inEveryWorld, type ReadTrait, type Worlds } from "./worlds";

/** A rule on what it sees of its sides. */
export type Run = (views: readonly View[]) => RuleAnswer<RuleWay, Weight, MeasureKinds>;

/** What a rule is judged on. */
export interface Case {
  readonly sides: readonly Subject[];
  readonly roles: readonly PartyRole[];
  readonly plan?: PlanSubjects | undefined;
  /** The utmost that the rule may ask for where it cannot tell. */
  readonly mayAsk: readonly GivenCondition[];
  /** What the runs rest on besides what they read. */
  readonly beside?: readonly Reading[];
  /** Whether there is anything to judge, where that hangs on what is read. */
  readonly takesPlace?: ((read: ReadTrait) => boolean) | undefined;
}

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

/**
 * Judges by one rule what it sees of its sides.
 *
 * @param runs - The rule on the likely stock first, then on each other stock that may be.
 */
export function judge(rule: Rule, runs: readonly Run[], given: Case): Judgement {
  const lacking = lackedBy(rule, given);
  if (lacking.some(({ trait }) => traitDefinitions[trait].essential))
    return leftOpen(rule, silent, missingQuestions(rule, lacking), utmostOf(rule, given));
  const [likely, ...ends] = runs.map((run) => inEveryWorld((read) => judging(rule, run, given, read)));
  return likely ? judged(rule, given, ends.reduce(beside, likely), lacking) : silent;
}

/** What nobody knows of the traits without which a rule cannot judge. Without an essential one it is not even tried. */
function lackedBy({ needs }: Rule, { sides, roles }: Case): readonly Reading[] {
  const lacking: Reading[] = [];
  for (const [index, { reading }] of sides.entries()) {
    for (const trait of needs?.[roles[index] ?? "from"] ?? []) {
      const needed = reading(trait);
      if (isMissing(needed)) lacking.push(needed);
    }
  }
  return lacking;
}

/** How a rule judges its sides, whichever values are read of them. */
function judging(rule: Rule, run: Run, given: Case, read: ReadTrait): () => WorldAnswer {
  const { sides, roles } = given;
  let told: Reading[] = [];
  const tell: ReadTrait = (reading) => {
    told.push(reading);
    return reading.possible[0]?.value;
  };
  const views = sides.map((side, index) => viewOf(rule, roles[index] ?? "from", side, read, tell));
  return () => {
    told = [];
    if (given.takesPlace?.(read) === false) return nothing;
    const answer = answerOf(rule, () => run(views), given, read);
    return answer.standing.length > 0 ? { ...answer, told } : answer;
  };
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
    return { ...nothing, standing };
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
  if (adopted.answer === nothing && others.length === 0 && !given.beside && !read.some(isMissing))
    return silent;
  const told = [adopted, ...others].map(({ answer }) => answer);
  const judgement = bounded(rule, worlds, given);
  const isUnknown = told.some((world) => world.unknown);
  const isOutside = told.some((world) => world.outside);
  if (complete && !isUnknown && !isOutside) return judgement;
  const questions = [
    ...(isUnknown ? unknownQuestions(rule, given, [...lacking, ...beyond(lacking, read)]) : []),
    ...(isOutside ? [outsideDomain(rule, given)] : []),
    ...(complete ? [] : disputedQuestions(rule, read)),
  ];
  return leftOpen(rule, judgement, questions, utmostOf(rule, given));
}

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
  const { standing } = adopted.answer;
  const { beside: weighed = [] } = given;
  const worlds = [adopted, ...others];
  const lacking = read.filter(isMissing);
  const used = [...read, ...beyond(read, weighed)];
  const mayAdd = used.filter((reading) => isMissing(reading) && rule.mayAdd?.includes(reading.trait));
  const mayRestrict = lacking.some(({ trait }) => rule.mayRestrict?.includes(trait));
  const isSilent = worlds.every(({ answer }) => answer.standing.length === 0);
  if (isSilent && mayAdd.length === 0 && !mayRestrict) return silent;
  const spans = worlds.map(({ answer }) => spanOf(answer.standing));
  const certain = spans.reduce((least, span) => Math.min(least, span.least), Number.POSITIVE_INFINITY);
  const onlyAdds = lacking.every((reading) => mayAdd.includes(reading));
  const least = onlyAdds ? certain : 0;
  const found = spans.reduce((most, span) => Math.max(most, span.greatest), 0);
  const open = mayRestrict ? Math.max(found, gravity.restricting) : found;
  const greatest = mayAdd.length > 0 ? gravity[gravest(rule.mayYield)] : open;
  const complete = completing(rule, [...used, ...beyond(used, adopted.answer.told)]);
  const asking = worlds.map(({ choices, answer }) => ({
    choices,
    asks: answer.standing.flatMap(({ condition }) => condition ?? []),
  }));
  return {
    findings: standing.filter(({ state }) => state !== "met").map(complete),
    met: standing.filter(({ state }) => state === "met").map(complete),
    open: [
      ...traitQuestions(rule, used, { least, greatest }),
      ...inputQuestions(rule, standing),
      ...individualQuestions(rule, standing),
    ],
    least,
    greatest,
    undetermined: standing.some(({ answer }) => couldBe(answer)),
    worlds: onlyAdds ? asking : [...asking, nothingAsked],
    mayAsk: mayAdd.length > 0 || mayRestrict ? utmostOf(rule, given) : [],
    hangsOn: asking.flatMap(({ asks }) => asks),
  };
}

/** Makes an answer a finding: by which rule, about whom, and how well it is supported by the traits that were read. */
function completing(rule: Rule, read: readonly Reading[]) {
  const bases = read.map(basisOf).filter((basis) => basis !== undefined);
  const basis = weakestBasis(bases.length > 0 ? bases : ["common-practice"]);
  const used = [...new Set(read.map(({ trait }) => trait))];
  const traits = rule.way === "all-groups" ? used.sort() : used; // In an order that hangs on no plan's.
  const { id, measures: kinds = {} } = rule;
  return ({ answer, from, to, condition, instead }: Standing): AnyFinding => {
    const uncertain = couldBe(answer);
    const { weight, measures, watchFor } = answer;
    const finding = {
      rule: id,
      weight,
      ...(from !== undefined && { from }),
      ...(to !== undefined && { to }),
      ...(measures && { measures: measured(kinds, measures) }),
      ...(watchFor && { watchFor }),
      ...(condition && { condition }),
      ...(instead && { instead }),
      ...(uncertain && { couldBe: uncertain }),
      basis,
      traits: [...traits],
    };
    return finding as AnyFinding;
  };
}
