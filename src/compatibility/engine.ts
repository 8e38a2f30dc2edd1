import { OutsideDomainError } from "../errors";
import { type TraitPath, traitTable } from "../species";
import { weakest } from "../species/statements";
import type { AssessedPlan } from "./assessed-plan";
import { type Finding, gravity, type Judged } from "./finding";
import { gravest, known, missing, openQuestions } from "./open-questions";
import type { PairRule, PlanRule, Rule } from "./rule";
import {
  type Answer,
  type Answers,
  answersOver,
  type Reading,
  type Side,
  union,
  type View,
} from "./scenarios";
import { type Standing, spanOf, standingOf } from "./standing";
import { type Stock, stocksOf } from "./stock";
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

/** Runs a rule on what it sees of its sides, with the animals at one end of their likely mass. */
type Run = (views: readonly View[], stock: Stock) => readonly Judged[];

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

/** Judges a plan by one rule: each of its groups, all of them together, or the plan as a whole. */
export function judgePlan(
  rule: PlanRule,
  subjects: readonly Subject[],
  thresholds: ThresholdValues,
  plan: AssessedPlan,
): readonly Judgement[] {
  const groups = subjects.map((subject) => sideOf(subject, rule));
  if (rule.way === "all-groups") {
    return [judgeTogether(rule, groups, (seen) => rule.judge({ groups: seen, plan, thresholds }), plan)];
  }
  const weighed = rule.weighs ? subjects.map(weighedSide) : [];
  const unweighed = weighed.filter((side) => !isKnown(side));
  if (unweighed.length > 0) return [leftOpen(rule, silent, missing(rule, unweighed))];
  if (rule.way === "once") {
    return [judge(rule, [], (_, stock) => rule.judge({ plan, stock, thresholds }), plan, weighed)];
  }
  return groups.map((group) =>
    judge(
      rule,
      [group],
      ([from], stock) => rule.judge({ from: from as View, plan, stock, thresholds }),
      plan,
      weighed,
    ),
  );
}

function sideOf(subject: Subject, rule: PlanRule): Side {
  if (rule.way === "once") return { subject, needs: [], uses: [] };
  return { subject, needs: rule.needs.from, uses: rule.uses?.from ?? [] };
}

/** A group as the scales see it. */
const weighedSide = (subject: Subject): Side => ({
  subject,
  needs: ["size.adultLength"],
  uses: ["size.bodyShape", "size.lengthWeight"],
});

/** Judges the groups of which everything needed is known; for the others the rule stays open. */
function judgeTogether(rule: Rule, groups: readonly Side[], run: Run, plan: AssessedPlan): Judgement {
  const judgement = judge(rule, groups.filter(isKnown), run, plan);
  const unseen = groups.filter((side) => !isKnown(side));
  return unseen.length > 0 ? leftOpen(rule, judgement, missing(rule, unseen)) : judgement;
}

const isKnown = (side: Side) => side.needs.every((trait) => known(side, trait));

/** Of a rule that has nothing to say, whatever may come out. */
const silent: Judgement = { findings: [], met: [], open: [], least: 0, greatest: 0, undetermined: false };

function judge(
  rule: Rule,
  sides: readonly Side[],
  run: Run,
  plan: AssessedPlan | undefined,
  weighed: readonly Side[] = [],
): Judgement {
  const lacking = sides.some((side) => side.needs.some((trait) => essentialAndUnknown(side, trait)));
  if (lacking) return leftOpen(rule, silent, missing(rule, sides));
  let outside = false;
  const [likely = nothing, ...ends] = stocksOf(weighed.map(({ subject }) => subject)).map((stock) =>
    answersOver(sides, (views) => {
      try {
        return run(views, stock);
      } catch (error) {
        if (!(error instanceof OutsideDomainError)) throw error;
        outside = true;
        return [];
      }
    }),
  );
  const answers = ends.reduce(beside, likely);
  const judgement = judged(rule, sides, answers, plan, weighed);
  const told = isUnknown(answers) ? leftOpen(rule, judgement, missing(rule, sides)) : judgement;
  return outside ? leftOpen(rule, told, [outsideDomain(rule, sides)]) : told;
}

/** Without an essential trait a rule is not even tried; any other is missed only where it is read. */
const essentialAndUnknown = (side: Side, trait: TraitPath) =>
  traitTable[trait].essential && !known(side, trait);

const isUnknown = ({ adopted, others }: Answers) => [adopted, ...others].includes("unknown");

const nothing: Answers = { adopted: [], others: [], read: [] };

/** The likely answers, with those for another end of the stock among the others. */
function beside(likely: Answers, { adopted, others, read }: Answers): Answers {
  return { ...likely, others: [...likely.others, adopted, ...others], read: union(likely.read, read) };
}

/** Some scenarios lie where an equation does not hold. */
function outsideDomain(rule: Rule, [side]: readonly Side[]): OpenQuestion {
  const of = side && { of: side.subject.index };
  return { rule: rule.id, ...of, reason: "outside-domain", couldBe: gravest(rule) };
}

/** A judgement of which something could not be judged: there it may be any of the rule's weights. */
function leftOpen(rule: Rule, judgement: Judgement, questions: readonly OpenQuestion[]): Judgement {
  const couldBe = gravity[gravest(rule)];
  if (couldBe === 0) return { ...judgement, least: 0 };
  const essential = questions.some(({ trait }) => trait && traitTable[trait].essential);
  return {
    ...judgement,
    open: [...judgement.open, ...questions],
    least: 0,
    greatest: Math.max(judgement.greatest, couldBe),
    undetermined: judgement.undetermined || essential,
  };
}

function judged(
  rule: Rule,
  sides: readonly Side[],
  answers: Answers,
  plan: AssessedPlan | undefined,
  weighed: readonly Side[],
): Judgement {
  const [adopted = [], ...others] = [answers.adopted, ...answers.others].map(told);
  const { read } = answers;
  if (adopted.length === 0 && others.length === 0) return silent;
  const standing = adopted.map((answer) => standingOf(answer, sides, plan));
  let { least, greatest } = spanOf(standing);
  for (const other of others) {
    const span = spanOf(other.map((answer) => standingOf(answer, sides, plan)));
    least = Math.min(least, span.least);
    greatest = Math.max(greatest, span.greatest);
  }
  if (read.some(({ side, trait }) => !known(side, trait))) least = 0;
  const used = [...read, ...readingsOf(weighed)];
  const complete = completing(rule, used);
  return {
    findings: standing.filter(({ state }) => state !== "met").map(complete),
    met: standing.filter(({ state }) => state === "met").map(complete),
    open: greatest > least ? openQuestions(rule, used, standing, greatest) : [],
    least,
    greatest,
    undetermined: false,
  };
}

const told = (answer: Answer) => (answer === "unknown" ? [] : answer);

/** What the scales read: the length, and the shape where the species' own weights are not known. */
function readingsOf(weighed: readonly Side[]): readonly Reading[] {
  const own = (side: Side) => known(side, "size.lengthWeight");
  const read = (trait: TraitPath, sides: readonly Side[]) => sides.map((side) => ({ side, trait }));
  return [
    ...read("size.adultLength", weighed),
    ...read(
      "size.bodyShape",
      weighed.filter((side) => !own(side)),
    ),
    ...read("size.lengthWeight", weighed.filter(own)),
  ];
}

/** Makes an answer a finding: by which rule, about whom, and how well it is supported by the traits that were read. */
function completing(rule: Rule, read: readonly Reading[]) {
  const bases = read
    .map(({ side, trait }) => side.subject.facts.get(trait)?.basis)
    .filter((basis) => basis !== undefined);
  const basis = weakest(bases.length > 0 ? bases : ["common-practice"]);
  const traits = [...new Set(read.map(({ trait }) => trait))];
  const about = { rule: rule.id, basis, traits };
  return ({ answer, from, to }: Standing): Finding =>
    Object.assign({}, about, from !== undefined && { from }, to !== undefined && { to }, answer);
}
