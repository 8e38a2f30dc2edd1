import type { TraitPath } from "../../species";
import { knows, type Possible, type Subject, shareFact } from "./subject";

/** A trait of a party that was read. */
export interface Reading {
  readonly subject: Subject;
  readonly trait: TraitPath;
}

/** Reads a trait in one world; undefined where nobody knows it. */
export type ReadTrait = (subject: Subject, trait: TraitPath) => unknown;

/** What a trait that may be one or another is taken to be. */
export interface Choice extends Reading {
  readonly taken: Possible;
}

/** What came out in one world, and what was taken there for each trait read that may be one or another. */
interface World<Answer> {
  readonly answer: Answer;
  readonly choices: readonly Choice[];
}

/**
 * What came out in every world: every combination of the values that stand for what was read. What is true of a species
 * is true of each of its groups.
 */
export interface Worlds<Answer> {
  /** On the adopted values. */
  readonly adopted: World<Answer>;
  readonly others: readonly World<Answer>[];
  /** What was read in any of them. */
  readonly read: readonly Reading[];
  /** Whether these are all worlds. */
  readonly complete: boolean;
}

/** The most worlds that are tried for one judgement; the whole catalog needs fewer. */
const mostWorlds = 1024;

/** Judges in the world of the adopted values, then in each other. */
export function inEveryWorld<Answer>(judge: (read: ReadTrait) => Answer): Worlds<Answer> {
  const readings: Reading[] = [];
  const judgeIn = (choices: readonly Choice[]) => {
    const noted: Reading[] = [];
    const answer = judge((subject, trait) => {
      note(noted, { subject, trait });
      return leftBy(choices, { subject, trait })[0]?.value;
    });
    for (const reading of noted) note(readings, reading);
    const { settled, further } = besides(choices, noted);
    pending.push(...further);
    return { answer, choices: settled };
  };
  const pending: (readonly Choice[])[] = [];
  const adopted = judgeIn([]);
  const others: World<Answer>[] = [];
  for (const choices of pending) {
    if (others.length === mostWorlds) return { adopted, others, read: readings, complete: false };
    others.push(judgeIn(choices));
  }
  return { adopted, others, read: readings, complete: true };
}

/**
 * What was taken for all that was read, and the worlds that differ in a trait for which nothing was chosen; together with
 * this one they are all.
 */
function besides(choices: readonly Choice[], readings: readonly Reading[]) {
  const further: (readonly Choice[])[] = [];
  let settled = choices;
  for (const reading of readings) {
    if (reading.subject.possible(reading.trait).length < 2 || isAmong(choices, reading)) continue;
    const [first, ...others] = leftBy(settled, reading).map((taken) => ({ ...reading, taken }));
    further.push(...others.map((choice) => [...settled, choice]));
    if (first) settled = [...settled, first];
  }
  return { settled, further };
}

/** What a trait may still be, once some choices are made. */
function leftBy(choices: readonly Choice[], { subject, trait }: Reading): readonly Possible[] {
  const possible = subject.possible(trait);
  if (possible.length < 2) return possible;
  const alike = choices.filter((choice) => choice.trait === trait);
  const own = alike.find((choice) => choice.subject === subject);
  if (own) return [own.taken];
  const kin = alike.find((choice) => shareFact(choice.subject, subject, trait));
  return kin ? possible.filter(({ from }) => from === kin.taken.from) : possible;
}

/** Whether two choices can be true at once. */
function agree(one: Choice, other: Choice): boolean {
  if (one.trait !== other.trait) return true;
  if (one.subject === other.subject) return one.taken === other.taken;
  return one.taken.from === other.taken.from || !shareFact(one.subject, other.subject, one.trait);
}

/** Whether two worlds can be parts of one. */
export const canBeOne = (some: readonly Choice[], others: readonly Choice[]) =>
  some.every((one) => others.every((other) => agree(one, other)));

function note(readings: Reading[], reading: Reading): void {
  if (!isAmong(readings, reading)) readings.push(reading);
}

/** Whether a trait of a party is among what was read. */
export const isAmong = (readings: readonly Reading[], { subject, trait }: Reading) =>
  readings.some((other) => other.subject === subject && other.trait === trait);

/** Whether a reading found nothing. */
export const isMissing = ({ subject, trait }: Reading) => !knows(subject, trait);
