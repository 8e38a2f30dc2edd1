import { finite } from "../errors";
import type { TraitPath } from "../species";
import type { Judged } from "./finding";
import type { Seen } from "./rule";
import type { Subject } from "./subject";

/** One side of a rule: a party and the traits the rule may read of it. */
export interface Side {
  readonly subject: Subject;
  readonly needs: readonly TraitPath[];
  readonly uses: readonly TraitPath[];
}

/** A party as a rule sees it. */
export type View = Seen<TraitPath, TraitPath>;

/** A trait of one side that a rule read. */
export interface Reading {
  readonly side: Side;
  readonly trait: TraitPath;
}

/** What a rule answers, or that it cannot tell: a trait it needs is not known. */
export type Answer = readonly Judged[] | "unknown";

/** The answers of a rule over every combination of the values that stand for what it reads. */
export interface Answers {
  /** On the adopted values. */
  readonly adopted: Answer;
  readonly others: readonly Answer[];
  /** What was read in any of them. */
  readonly read: readonly Reading[];
}

/** Thrown where a rule reads a trait it needs and nobody knows. Made once: a stack for each would cost more than the rule. */
const unknownTrait = /* @__PURE__ */ new Error("a trait that is needed is not known");

/** The value taken for a disputed trait; the adopted one where none is chosen. */
interface Choice extends Reading {
  readonly value: unknown;
}

/** A rule run on what it sees of its sides. */
export type Run = (views: readonly View[]) => readonly Judged[];

/** Runs a rule on the adopted values, then on each other value of whatever it reads. */
export function answersOver(sides: readonly Side[], run: Run): Answers {
  const answers: Answer[] = [];
  let read: readonly Reading[] = [];
  const scenarios: (readonly Choice[])[] = [[]];
  for (const choices of scenarios) {
    const readings: Reading[] = [];
    answers.push(answerOf(() => run(sides.map((side) => viewOf(side, choices, readings)))));
    read = union(read, readings);
    scenarios.push(...furtherScenarios(choices, readings));
  }
  const [adopted = [], ...others] = answers;
  return { adopted, others, read };
}

function answerOf(run: () => Answer): Answer {
  try {
    return run();
  } catch (error) {
    if (error === unknownTrait) return "unknown";
    throw error;
  }
}

/** The scenarios that differ from this one in a trait it read and had no choice for; together with it they are all. */
function furtherScenarios(
  choices: readonly Choice[],
  readings: readonly Reading[],
): readonly (readonly Choice[])[] {
  const scenarios: (readonly Choice[])[] = [];
  let settled = choices;
  for (const { side, trait } of readings) {
    const values = side.subject.disputed.get(trait);
    if (!values || isAmong(side, trait, choices)) continue;
    const [adopted, ...others] = values.map((value) => [...settled, { side, trait, value }]);
    scenarios.push(...others);
    settled = adopted ?? settled;
  }
  return scenarios;
}

/** A party with the traits the rule declares, noting each that is read. */
function viewOf(side: Side, choices: readonly Choice[], readings: Reading[]): View {
  const { party, facts } = side.subject;
  return new Proxy({ party } as View, {
    get: (_, key) => {
      if (key === "party") return party;
      const trait = key as TraitPath;
      if (!side.needs.includes(trait) && !side.uses.includes(trait)) return undefined;
      if (!isAmong(side, trait, readings)) {
        vet(side.subject, trait);
        readings.push({ side, trait });
      }
      if (side.needs.includes(trait) && !facts.has(trait)) throw unknownTrait;
      const choice = choices.find((made) => made.side === side && made.trait === trait);
      return choice ? choice.value : facts.get(trait)?.value;
    },
  });
}

/** What was read here or there, each trait of a side once. */
export function union(here: readonly Reading[], there: readonly Reading[]): readonly Reading[] {
  const further = there.filter(({ side, trait }) => !isAmong(side, trait, here));
  return further.length > 0 ? [...here, ...further] : here;
}

function isAmong(side: Side, trait: TraitPath, readings: readonly Reading[]): boolean {
  return readings.some((other) => other.side === side && other.trait === trait);
}

function vet({ facts, vetted }: Subject, trait: TraitPath): void {
  if (vetted.has(trait)) return;
  checkNumbers(facts.get(trait), trait);
  vetted.add(trait);
}

/** Refuses a fact that holds a number no trait can have. */
function checkNumbers(held: unknown, path: TraitPath): void {
  if (typeof held === "number") finite(held, path);
  else if (typeof held === "object")
    for (const key in held) checkNumbers(held[key as keyof typeof held], path);
}
