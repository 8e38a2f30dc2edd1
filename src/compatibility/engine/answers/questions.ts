import { gathered } from "../../../gathered";
import type { FactName } from "../../../plan";
import { type CheckedPlan, isFact, readPlan } from "../../../plan/inner";
import type { TraitPath, TraitValue } from "../../../species";
import { traitDefinitions } from "../../../species/inner";
import type { Rule } from "../rule/rule";
import { gravest, gravity, type Weight } from "../rule/weight";
import { isMissing, type Reading, type Subject } from "../sides/subject";
import { couldBe, type Standing } from "./standing";

/** What every open question says. */
export interface QuestionCore {
  /** The id of the rule that asks. */
  readonly rule: string;
  /** The party it is about, an index into `parties`; absent: the tank. */
  readonly of?: number;
  /** The gravest finding that the answer could bring. */
  readonly couldBe: Weight;
}

/** Something that was not known, and what hangs on it. */
export type OpenQuestion =
  /** Nobody knows the trait. */
  | MissingQuestion
  /** Sources differ on the trait: the values that stand, the adopted one first. */
  | { readonly [Path in TraitPath]: DisputedQuestion<Path> }[TraitPath]
  /** The plan does not state the fact. */
  | (QuestionCore & { readonly reason: "not-given"; readonly on: FactName })
  /** An equation does not hold for this plan. */
  | (QuestionCore & { readonly reason: "outside-domain" })
  /** Individuals differ, and nobody can tell in advance what these do. */
  | (QuestionCore & { readonly reason: "individual" });

/** That nobody knows a trait. */
export interface MissingQuestion extends QuestionCore {
  readonly reason: "missing";
  readonly trait: TraitPath;
  /** There where the outcome is undetermined for want of it, unless something else rules out. */
  readonly decides?: true;
}

/** That sources differ on a trait, with values of that trait. */
export interface DisputedQuestion<Path extends TraitPath> extends QuestionCore {
  readonly reason: "disputed";
  readonly trait: Path;
  readonly values: readonly TraitValue<Path>[];
}

/** Whether a question is about a trait without which a record is incomplete. */
export const isEssential = (question: OpenQuestion) =>
  question.reason === "missing" && (traitDefinitions[question.trait].essential ?? false);

/** Whether an outcome is undetermined for want of what a question asks. */
export const decides = (question: OpenQuestion): boolean =>
  question.reason === "missing" && question.decides === true;

/** What nobody knows and a rule cannot judge without; what is essential, or could rule out, decides. */
export const decidingQuestions = (rule: Rule, read: readonly Reading[]) =>
  missingQuestions(rule, read).map(
    (question): OpenQuestion =>
      question.couldBe === "blocking" || isEssential(question) ? { ...question, decides: true } : question,
  );

/** What was read and nobody knows. */
function missingQuestions(rule: Rule, read: readonly Reading[], couldBe = gravest(rule.mayYield)) {
  return read.filter(isMissing).map(
    ({ subject, trait }): MissingQuestion => ({
      rule: rule.id,
      of: subject.index,
      trait,
      reason: "missing",
      couldBe,
    }),
  );
}

/** What was read and on which sources differ. */
export function disputedQuestions(rule: Rule, read: readonly Reading[], couldBe = gravest(rule.mayYield)) {
  return gathered(read, ({ subject, trait, values, varies }): readonly OpenQuestion[] => {
    if (values.length < 2) return [];
    if (varies) return [{ rule: rule.id, of: subject.index, reason: "individual", couldBe }];
    // Which values belong to which trait the compiler cannot see: a reading has those of its own.
    const question = { rule: rule.id, of: subject.index, trait, reason: "disputed", values, couldBe };
    return [question as OpenQuestion];
  });
}

/** What a rule reads of the plan and the plan does not say. */
function unstatedQuestions(rule: Rule, plan: CheckedPlan, couldBe = gravest(rule.mayYield)) {
  const { id, reads = [] } = rule;
  return reads
    .filter((name) => isFact(name) && readPlan(plan, name) === undefined)
    .map((name): OpenQuestion => ({ rule: id, on: name as FactName, reason: "not-given", couldBe }));
}

/**
 * Why a rule cannot tell: a trait that nobody knows; where it lacks none, what the plan does not say.
 *
 * @param onAdopted - Whether it cannot on the adopted values either.
 */
export function unknownQuestions(
  rule: Rule,
  plan: CheckedPlan | undefined,
  read: readonly Reading[],
  onAdopted: boolean,
): readonly OpenQuestion[] {
  const missing = onAdopted ? decidingQuestions(rule, read) : missingQuestions(rule, read);
  return missing.length > 0 || !plan ? missing : unstatedQuestions(rule, plan);
}

/** That an equation may not hold for whom a rule judges. */
export function outsideQuestion(rule: Rule, side: Subject | undefined): OpenQuestion {
  const of = side && { of: side.index };
  return { rule: rule.id, ...of, reason: "outside-domain", couldBe: gravest(rule.mayYield) };
}

/** What the plan does not say, of the conditions that hang on it. */
export function notGivenQuestions(rule: Rule, standing: readonly Standing[]) {
  return gathered(standing.filter(isNotGiven), ({ condition }): readonly OpenQuestion[] => {
    if (!condition) return [];
    const { on, of } = condition;
    return [
      {
        rule: rule.id,
        ...(of !== undefined && { of }),
        on,
        reason: "not-given",
        couldBe: "restricting",
      },
    ];
  });
}

/** What hangs on the individuals: on those of whom a finding tells, on both where it has no direction. */
export function individualQuestions(
  { id, way }: Rule,
  standing: readonly Standing[],
): readonly OpenQuestion[] {
  return gathered(standing.filter(isUncertain), ({ answer, from, to }): readonly OpenQuestion[] => {
    const couldTurn = couldBe(answer);
    if (!couldTurn) return [];
    const question = { rule: id, reason: "individual", couldBe: couldTurn } as const;
    if (from === undefined) return [question];
    const about = way === "mutual" && to !== undefined ? [from, to] : [from];
    return about.map((of) => ({ ...question, of }));
  });
}

const isNotGiven = ({ state }: Standing): boolean => state === "not-given";

const isUncertain = ({ answer }: Standing): boolean => couldBe(answer) !== undefined;

/** The traits on which the bounds of a judgement hang, where they lie apart. */
export function traitQuestions(
  rule: Rule,
  read: readonly Reading[],
  { least, greatest }: { readonly least: number; readonly greatest: number },
): readonly OpenQuestion[] {
  if (greatest <= least) return [];
  const couldBe = greatest === gravity.blocking ? "blocking" : "restricting";
  return [...missingQuestions(rule, read, couldBe), ...disputedQuestions(rule, read, couldBe)];
}
