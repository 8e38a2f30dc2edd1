import { OutsideDomainError } from "../errors";
import { traitTable } from "../species";
import { weakest } from "../species/statements";
import type { AssessedPlan } from "./assessed-plan";
import { type Finding, gravity, type Judged } from "./finding";
import { gravest, known, missing, openQuestions } from "./open-questions";
import type { PairRule, PlanRule, Rule } from "./rule";
import { type Answers, answersOver, type Reading, type Side, type View } from "./scenarios";
import { type Standing, spanOf, standingOf } from "./standing";
import type { Subject } from "./subject";
import type { ThresholdValues } from "./thresholds";
import type { OpenQuestion } from "./verdict";

/** What one rule says of one party or pair. */
export interface Judgement {
  readonly findings: readonly Finding[];
  readonly met: readonly Finding[];
  readonly open: readonly OpenQuestion[];
  /** The least and the greatest gravity over what is disputed, missing or not given. */
  readonly least: number;
  readonly greatest: number;
  /** An essential trait is missing that could block or restrict. */
  readonly undetermined: boolean;
}

type Run = (views: readonly View[]) => readonly Judged[];

/** Judges a pair of parties by one rule. */
export function judgePair(
  rule: PairRule,
  from: Subject,
  to: Subject,
  thresholds: ThresholdValues,
  plan?: AssessedPlan,
): Judgement {
  const sides = [
    { subject: from, needs: rule.needs.from, uses: rule.uses?.from ?? [] },
    { subject: to, needs: rule.needs.to, uses: rule.uses?.to ?? [] },
  ];
  return judge(rule, sides, ([a, b]) => rule.judge({ from: a as View, to: b as View, thresholds }), plan);
}

/** Judges a plan by one rule: each of its groups, or the plan as a whole. */
export function judgePlan(
  rule: PlanRule,
  subjects: readonly Subject[],
  thresholds: ThresholdValues,
  plan: AssessedPlan,
): readonly Judgement[] {
  if (rule.way === "once") return [judge(rule, [], () => rule.judge({ plan, thresholds }), plan)];
  return subjects.map((subject) => {
    const side = { subject, needs: rule.needs.from, uses: rule.uses?.from ?? [] };
    return judge(rule, [side], ([from]) => rule.judge({ from: from as View, plan, thresholds }), plan);
  });
}

/** Of a rule that has nothing to say, whatever may come out. */
const silent: Judgement = { findings: [], met: [], open: [], least: 0, greatest: 0, undetermined: false };

function judge(rule: Rule, sides: readonly Side[], run: Run, plan: AssessedPlan | undefined): Judgement {
  if (sides.some((side) => side.needs.some((trait) => !known(side, trait))))
    return unjudged(rule, missing(rule, sides));
  let outside = false;
  const answers = answersOver(sides, (views) => {
    try {
      return run(views);
    } catch (error) {
      if (!(error instanceof OutsideDomainError)) throw error;
      outside = true;
      return [];
    }
  });
  const judgement = judged(rule, sides, answers, plan);
  return outside ? besidesOutside(rule, sides, judgement) : judgement;
}

/** A judgement some of whose scenarios lie where an equation does not hold: there it may be any of the rule's weights. */
function besidesOutside(rule: Rule, [side]: readonly Side[], judgement: Judgement): Judgement {
  const couldBe = gravest(rule);
  const question = {
    rule: rule.id,
    ...(side && { of: side.subject.index }),
    reason: "outside-domain",
    couldBe,
  } as const;
  return {
    ...judgement,
    open: gravity[couldBe] > 0 ? [...judgement.open, question] : judgement.open,
    least: 0,
    greatest: Math.max(judgement.greatest, gravity[couldBe]),
  };
}

/** A rule that could not be run may yield any of its weights. */
function unjudged(rule: Rule, open: readonly OpenQuestion[]): Judgement {
  const greatest = gravity[gravest(rule)];
  const essential = open.some(({ trait }) => trait && traitTable[trait].essential);
  return {
    findings: [],
    met: [],
    open: greatest > 0 ? open : [],
    least: 0,
    greatest,
    undetermined: essential && greatest > 0,
  };
}

function judged(
  rule: Rule,
  sides: readonly Side[],
  answers: Answers,
  plan: AssessedPlan | undefined,
): Judgement {
  const { adopted, others, read } = answers;
  if (adopted.length === 0 && others.length === 0) return silent;
  const standing = adopted.map((answer) => standingOf(answer, sides, plan));
  let { least, greatest } = spanOf(standing);
  for (const other of others) {
    const span = spanOf(other.map((answer) => standingOf(answer, sides, plan)));
    least = Math.min(least, span.least);
    greatest = Math.max(greatest, span.greatest);
  }
  if (read.some(({ side, trait }) => !known(side, trait))) least = 0;
  const complete = completing(rule, sides, read);
  return {
    findings: standing.filter(({ state }) => state !== "met").map(complete),
    met: standing.filter(({ state }) => state === "met").map(complete),
    open: greatest > least ? openQuestions(rule, read, standing, greatest) : [],
    least,
    greatest,
    undetermined: false,
  };
}

/** Makes an answer a finding: by which rule, about whom, and how well it is supported by the traits that were read. */
function completing(rule: Rule, [from, to]: readonly Side[], read: readonly Reading[]) {
  const bases = read
    .map(({ side, trait }) => side.subject.facts.get(trait)?.basis)
    .filter((basis) => basis !== undefined);
  const basis = weakest(bases.length > 0 ? bases : ["common-practice"]);
  const traits = [...new Set(read.map(({ trait }) => trait))];
  const about = {
    rule: rule.id,
    basis,
    traits,
    ...(from && { from: from.subject.index }),
    ...(to && { to: to.subject.index }),
  };
  return ({ answer }: Standing): Finding => Object.assign({}, about, answer);
}
