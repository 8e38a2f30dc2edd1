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

/** The answers of a rule over every combination of the values that stand for what it reads. */
export interface Answers {
  /** On the adopted values. */
  readonly adopted: readonly Judged[];
  readonly others: readonly (readonly Judged[])[];
  /** What was read in any of them. */
  readonly read: readonly Reading[];
}

/** The value taken for a disputed trait; the adopted one where none is chosen. */
interface Choice extends Reading {
  readonly value: unknown;
}

type Run = (views: readonly View[]) => readonly Judged[];

/** Runs a rule on the adopted values, then on each other value of whatever it reads. */
export function answersOver(sides: readonly Side[], run: Run): Answers {
  const answers: (readonly Judged[])[] = [];
  const read: Reading[] = [];
  const scenarios: (readonly Choice[])[] = [[]];
  for (const choices of scenarios) {
    const readings: Reading[] = [];
    answers.push(run(sides.map((side) => viewOf(side, choices, readings))));
    for (const reading of readings) if (!isAmong(reading.side, reading.trait, read)) read.push(reading);
    scenarios.push(...furtherScenarios(choices, readings));
  }
  const [adopted = [], ...others] = answers;
  return { adopted, others, read };
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
        checkNumbers(facts.get(trait), trait);
        readings.push({ side, trait });
      }
      const choice = choices.find((made) => made.side === side && made.trait === trait);
      return choice ? choice.value : facts.get(trait)?.value;
    },
  });
}

function isAmong(side: Side, trait: TraitPath, readings: readonly Reading[]): boolean {
  return readings.some((other) => other.side === side && other.trait === trait);
}

/** Refuses a fact that holds a number no trait can have. */
function checkNumbers(held: unknown, path: TraitPath): void {
  if (typeof held === "number") finite(held, path);
  else if (typeof held === "object")
    for (const key in held) checkNumbers(held[key as keyof typeof held], path);
}
