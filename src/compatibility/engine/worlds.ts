import { type Possible, type Reading, shareFact } from "./sides/subject";

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
  /** What was read on the adopted values to tell more, and changes no answer. */
  readonly told: readonly Reading[];
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
  /** Reads the adopted value of a trait that only tells more, whatever the world. */
  readonly tell: ReadTrait;
  /** Judges in the world of the adopted values, then in each other, by what it reads with `read`. */
  readonly inEveryWorld: <Answer>(judge: () => Answer) => Worlds<Answer>;
}

/** A reader of worlds. */
export function worldReader(): WorldReader {
  let choices: readonly Choice[] = adoptedChoices;
  let noted: Reading[] = [];
  let told: Reading[] = [];
  const judgeIn = <Answer>(chosen: readonly Choice[], judge: () => Answer) => {
    choices = chosen;
    noted = [];
    told = [];
    return { answer: judge(), choices: settledBy(chosen, noted) };
  };
  return {
    read: (reading) => {
      if (!noted.includes(reading)) noted.push(reading);
      return isDisputed(reading) ? valueIn(choices, reading) : reading.possible[0]?.value;
    },
    tell: (reading) => {
      told.push(reading);
      return reading.possible[0]?.value;
    },
    inEveryWorld: (judge) => {
      const adopted = judgeIn(adoptedChoices, judge);
      const read = noted;
      const toldMore = told;
      const others: (typeof adopted)[] = [];
      if (adopted.choices.length === 0) return { adopted, others, told: toldMore, read, complete: true };
      const pending = besides(adoptedChoices, adopted.choices);
      for (const chosen of pending) {
        if (others.length === mostWorlds) return { adopted, others, told: toldMore, read, complete: false };
        const other = judgeIn(chosen, judge);
        others.push(other);
        pending.push(...besides(chosen, other.choices));
        for (const reading of noted) if (!read.includes(reading)) read.push(reading);
      }
      return { adopted, others, told: toldMore, read, complete: true };
    },
  };
}

/** The worlds of what is likely, with those of another end among the others. */
export const together = <Answer>(
  likely: Worlds<Answer>,
  { adopted, others, read, complete }: Worlds<Answer>,
): Worlds<Answer> => ({
  adopted: likely.adopted,
  others: [...likely.others, adopted, ...others],
  told: likely.told,
  read: [...likely.read, ...beyond(likely.read, read)],
  complete: likely.complete && complete,
});

/** What was read and is not among what was read before. */
export const beyond = (before: readonly Reading[], read: readonly Reading[]) =>
  read.filter((reading) => !before.includes(reading));

/** In the world of the adopted values nothing else is chosen. */
const adoptedChoices: readonly Choice[] = [];

/** What a trait is in a world of some choices: what was chosen, else the first that is left. */
function valueIn(choices: readonly Choice[], reading: Reading): unknown {
  for (const choice of choices) if (choice.reading === reading) return choice.taken.value;
  return leftBy(choices, reading)[0]?.value;
}

/** What was taken for all that was read and may be one or another: what was chosen, else the first that is left. */
function settledBy(choices: readonly Choice[], readings: readonly Reading[]): readonly Choice[] {
  const settled = [...choices];
  for (const reading of readings) {
    if (!isDisputed(reading) || isChosen(choices, reading)) continue;
    const [taken] = leftBy(settled, reading);
    if (taken) settled.push({ reading, taken });
  }
  return settled.length > choices.length ? settled : choices;
}

/** The worlds that differ in a trait for which nothing was chosen; together with this one they are all. */
function besides(choices: readonly Choice[], settled: readonly Choice[]): (readonly Choice[])[] {
  const worlds: (readonly Choice[])[] = [];
  for (let index = choices.length; index < settled.length; index += 1) {
    const { reading } = settled[index] as Choice;
    const before = settled.slice(0, index);
    const [, ...others] = leftBy(before, reading);
    for (const taken of others) worlds.push([...before, { reading, taken }]);
  }
  return worlds;
}

const isDisputed = ({ possible }: Reading): boolean => possible.length > 1;

/** What a trait may still be, once some choices are made for others. */
function leftBy(choices: readonly Choice[], reading: Reading): readonly Possible[] {
  const { possible, trait } = reading;
  if (possible.length < 2) return possible;
  for (const kin of choices) {
    if (kin.reading.trait === trait && shareFact(kin.reading, reading))
      return possible.filter(({ from }) => from === kin.taken.from);
  }
  return possible;
}

function isChosen(choices: readonly Choice[], reading: Reading): boolean {
  for (const choice of choices) if (choice.reading === reading) return true;
  return false;
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
