import { OutsideDomainError } from "../errors";
import { type TraitPath, traitTable, weakestBasis as weakest } from "../species";
import type { AssessedPlan } from "./assessed-plan";
import { type Finding, gravity } from "./finding";
import { gravest, known, missing, openQuestions } from "./open-questions";
import type { Rule } from "./rule";
import {
  type Answer,
  type Answers,
  answersOver,
  type Reading,
  type Run,
  type Side,
  union,
} from "./scenarios";
import { type Standing, spanOf, standingOf } from "./standing";
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

/** Of a rule that has nothing to say, whatever may come out. */
export const silent: Judgement = {
  findings: [],
  met: [],
  open: [],
  least: 0,
  greatest: 0,
  undetermined: false,
};

/**
 * Judges by one rule what it sees of its sides.
 *
 * @param runs - The rule on the likely stock first, then on each other stock that may be.
 * @param weighed - The groups whose mass the runs rest on.
 */
export function judge(
  rule: Rule,
  sides: readonly Side[],
  runs: readonly Run[],
  plan: AssessedPlan | undefined,
  weighed: readonly Side[] = [],
): Judgement {
  const lacking = sides.some((side) => side.needs.some((trait) => essentialAndUnknown(side, trait)));
  if (lacking) return leftOpen(rule, silent, missing(rule, sides));
  let outside = false;
  const [likely = nothing, ...ends] = runs.map((run) =>
    answersOver(sides, (views) => {
      try {
        return run(views);
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
  !known(side, trait) && traitTable[trait].essential;

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
export function leftOpen(rule: Rule, judgement: Judgement, questions: readonly OpenQuestion[]): Judgement {
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
