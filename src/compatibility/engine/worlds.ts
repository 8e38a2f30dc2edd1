import { type Possible, type Reading, shareFact } from "./subject";

/** Reads a trait in one world; undefined where nobody knows it. */
export type ReadTrait = (reading: Reading) => unknown;

/** What a trait that may be one or another is taken to be. */
export interface Choice {
  readonly reading: Reading;
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

/** Reads traits in one world after another: one reader serves all that a rule judges, one after the other. */
export interface WorldReader {
  /** Reads a trait in the world that is being judged. */
  readonly read: ReadTrait;
  /** Judges in the world of the adopted values, then in each other, by what it reads with `read`. */
  readonly inEveryWorld: <Answer>(judge: () => Answer) => Worlds<Answer>;
}

/** A reader of worlds. */
export function worldReader(): WorldReader {
  let choices: readonly Choice[] = [];
  let noted: Reading[] = [];
  return {
    read: (reading) => {
      if (!noted.includes(reading)) noted.push(reading);
      return leftBy(choices, reading)[0]?.value;
    },
    inEveryWorld: (judge) => {
      const pending: (readonly Choice[])[] = [];
      const judgeIn = (chosen: readonly Choice[]) => {
        choices = chosen;
        noted = [];
        const answer = judge();
        const { settled, further } = besides(chosen, noted);
        pending.push(...further);
        return { answer, choices: settled };
      };
      const adopted = judgeIn([]);
      const read = noted;
      const others: ReturnType<typeof judgeIn>[] = [];
      for (const chosen of pending) {
        if (others.length === mostWorlds) return { adopted, others, read, complete: false };
        others.push(judgeIn(chosen));
        for (const reading of noted) if (!read.includes(reading)) read.push(reading);
      }
      return { adopted, others, read, complete: true };
    },
  };
}

/**
 * What was taken for all that was read, and the worlds that differ in a trait for which nothing was chosen; together with
 * this one they are all.
 */
function besides(choices: readonly Choice[], readings: readonly Reading[]) {
  if (!readings.some(isDisputed)) return { settled: choices, further: none };
  const further: (readonly Choice[])[] = [];
  let settled = choices;
  for (const reading of readings) {
    if (!isDisputed(reading) || choices.some((choice) => choice.reading === reading)) continue;
    const [first, ...others] = leftBy(settled, reading).map((taken) => ({ reading, taken }));
    for (const other of others) further.push([...settled, other]);
    if (first) settled = [...settled, first];
  }
  return { settled, further };
}

const none: readonly (readonly Choice[])[] = [];

const isDisputed = ({ possible }: Reading): boolean => possible.length > 1;

/** What a trait may still be, once some choices are made. */
function leftBy(choices: readonly Choice[], reading: Reading): readonly Possible[] {
  const { possible, trait } = reading;
  if (possible.length < 2 || choices.length === 0) return possible;
  const own = choices.find((choice) => choice.reading === reading);
  if (own) return [own.taken];
  const kin = choices.find((choice) => choice.reading.trait === trait && shareFact(choice.reading, reading));
  return kin ? possible.filter(({ from }) => from === kin.taken.from) : possible;
}

/** Whether two choices can be true at once. */
function agree(one: Choice, other: Choice): boolean {
  if (one.reading.trait !== other.reading.trait) return true;
  if (one.reading === other.reading) return one.taken === other.taken;
  return one.taken.from === other.taken.from || !shareFact(one.reading, other.reading);
}

/** Whether two worlds can be parts of one. */
export const canBeOne = (some: readonly Choice[], others: readonly Choice[]) =>
  some.every((one) => others.every((other) => agree(one, other)));
