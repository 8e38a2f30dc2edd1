import { gathered } from "../../gathered";
import { traitDefinitions } from "../../species/inner";
import { bounded } from "./answers/bounded";
import { type Judgement, leftOpen, silent } from "./answers/judgement";
import { decidingQuestions, disputedQuestions, outsideQuestion, unknownQuestions } from "./answers/questions";
import { type PlanSubjects, utmostOf } from "./answers/standing";
import { answerOf, nothing, type WorldAnswer } from "./answers/world-answer";
import type { GivenCondition, PartyRole } from "./rule/finding";
import type { MeasureKinds } from "./rule/measures";
import { isPairRule, type Rule, type RuleAnswer, type RuleWay } from "./rule/rule";
import type { Weight } from "./rule/weight";
import { isAskedOf } from "./sides/is-asked-of";
import { onceForEach } from "./sides/once-for-each";
import { isMissing, type Reading, type Subject } from "./sides/subject";
import { type View, viewOf } from "./sides/view";
import { beyond, type ReadTrait, together, type Worlds, worldReader } from "./worlds";

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
}

/** Whether there is anything to judge, where that hangs on what is read. */
export type TakesPlace = (read: ReadTrait) => boolean;

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
  { plan, mayAsk, beside }: Setting,
): (sides: readonly Subject[], takesPlace?: TakesPlace) => Judgement {
  const { read, tell, inEveryWorld } = worldReader();
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
  const [likely, ...ends] = runs;
  return (sides, takesPlace) => {
    if (!isAskedOf(rule, sides)) return silent;
    const given: Case = { sides, plan, mayAsk, beside };
    const seen = sides.map(seenAt);
    const lacking = lackedBy(seen);
    if (lacking.some(({ trait }) => traitDefinitions[trait].essential))
      return leftOpen(rule, silent, decidingQuestions(rule, lacking), utmostOf(rule, given));
    if (!likely) return silent;
    const views = seen.map(({ view }) => view);
    const answersOf = (run: Run) => {
      const answers = () => run(views);
      return inEveryWorld(() =>
        takesPlace?.(read) === false ? nothing : answerOf(rule, answers, given, read),
      );
    };
    const worlds = ends.reduce((known, end) => together(known, answersOf(end)), answersOf(likely));
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

/** What a rule says, given what it answers in every world. */
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
    ...(isUnknown
      ? unknownQuestions(
          rule,
          given.plan?.plan,
          [...lacking, ...beyond(lacking, read)],
          adopted.answer.unknown,
        )
      : []),
    ...(isOutside ? [outsideQuestion(rule, given.sides[0])] : []),
    ...(complete ? [] : disputedQuestions(rule, read)),
  ];
  return leftOpen(rule, judgement, questions, utmostOf(rule, given));
}

const saysNothing = ({ answer }: { readonly answer: WorldAnswer }) => answer === nothing;
