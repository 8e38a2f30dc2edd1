import type { TraitPath } from "../../species";
import { knows, type Subject } from "./subject";

/** A trait of a party that was read. */
export interface Reading {
  readonly subject: Subject;
  readonly trait: TraitPath;
}

/** Reads a trait in one world; undefined where nobody knows it. */
export type ReadTrait = (subject: Subject, trait: TraitPath) => unknown;

/** The value taken for a trait on which sources differ. */
interface Choice extends Reading {
  readonly value: unknown;
}

/** What came out in every world: every combination of the values that stand for what was read. */
export interface Worlds<Answer> {
  /** On the adopted values. */
  readonly adopted: Answer;
  readonly others: readonly Answer[];
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
      const chosen = choices.find((choice) => choice.subject === subject && choice.trait === trait);
      return chosen ? chosen.value : subject.standing(trait)[0];
    });
    for (const reading of noted) note(readings, reading);
    pending.push(...furtherWorlds(choices, noted));
    return answer;
  };
  const pending: (readonly Choice[])[] = [];
  const adopted = judgeIn([]);
  const others: Answer[] = [];
  for (const choices of pending) {
    if (others.length === mostWorlds) return { adopted, others, read: readings, complete: false };
    others.push(judgeIn(choices));
  }
  return { adopted, others, read: readings, complete: true };
}

/** The worlds that differ from this one in a trait it read and had no choice for; together with it they are all. */
function furtherWorlds(
  choices: readonly Choice[],
  readings: readonly Reading[],
): readonly (readonly Choice[])[] {
  const worlds: (readonly Choice[])[] = [];
  let settled = choices;
  for (const { subject, trait } of readings) {
    const [adopted, ...others] = subject.standing(trait);
    if (others.length === 0 || isAmong(choices, { subject, trait })) continue;
    worlds.push(...others.map((value) => [...settled, { subject, trait, value }]));
    settled = [...settled, { subject, trait, value: adopted }];
  }
  return worlds;
}

function note(readings: Reading[], reading: Reading): void {
  if (!isAmong(readings, reading)) readings.push(reading);
}

/** Whether a trait of a party is among what was read. */
export const isAmong = (readings: readonly Reading[], { subject, trait }: Reading) =>
  readings.some((other) => other.subject === subject && other.trait === trait);

/** Whether a reading found nothing. */
export const isMissing = ({ subject, trait }: Reading) => !knows(subject, trait);
