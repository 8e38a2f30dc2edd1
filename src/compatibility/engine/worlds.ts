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

/**
 * Judges in the world of the adopted values, then in each other.
 *
 * @param judging - Given how traits are read, whichever world it is, tells how to judge in that world.
 */
export function inEveryWorld<Answer>(judging: (read: ReadTrait) => () => Answer): Worlds<Answer> {
  let choices: readonly Choice[] = [];
  let noted: Reading[] = [];
  const judge = judging((reading) => {
    if (!noted.includes(reading)) noted.push(reading);
    return leftBy(choices, reading)[0]?.value;
  });
  const judgeIn = (chosen: readonly Choice[]) => {
    choices = chosen;
    noted = [];
    const answer = judge();
    const { settled, further } = besides(chosen, noted);
    pending.push(...further);
    return { answer, choices: settled };
  };
  const pending: (readonly Choice[])[] = [];
  const adopted = judgeIn([]);
  const read = noted;
  const others: World<Answer>[] = [];
  for (const chosen of pending) {
    if (others.length === mostWorlds) return { adopted, others, read, complete: false };
    others.push(judgeIn(chosen));
    read.push(...noted.filter((reading) => !read.includes(reading)));
  }
  return { adopted, others, read, complete: true };
}

/**
 * What was taken for all that was read, and the worlds that differ in a trait for which nothing was chosen; together with
 * this one they are all.
 */
function besides(choices: readonly Choice[], readings: readonly Reading[]) {
  const further: (readonly Choice[])[] = [];
  let settled = choices;
  for (const reading of readings) {
    if (reading.possible.length < 2 || choices.some((choice) => choice.reading === reading)) continue;
    const [first, ...others] = leftBy(settled, reading).map((taken) => ({ reading, taken }));
    for (const other of others) further.push([...settled, other]);
    if (first) settled = [...settled, first];
  }
  return { settled, further };
}

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
