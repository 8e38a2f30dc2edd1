import type { AimedCondition, Verdict } from "../../compatibility";
import type { WriteQuantity } from "../figure";
import type { Alike } from "../matters/alike";
import type { Messages } from "../messages/messages";
import { capitalised } from "../names";
import { quantityWriter, type UnitSystem } from "../quantities";
import { conditionTold } from "./condition-told";
import { findingTold } from "./finding-told";
import type { Means } from "./means";
import { type Naming, namingOf } from "./naming";
import { partiesTold } from "./parties-told";
import { type Questions, questionTold } from "./question-told";

/** Puts findings on some parties and their conditions into sentences of one language. */
export interface Sayer extends Naming {
  /** All parties with their numbers; those of a pair that are alike once. */
  readonly parties: readonly string[];
  readonly figure: WriteQuantity;
  /** One sentence for findings that differ only in the parties they are about. */
  readonly findings: (alike: Alike) => string;
  /** The same without a capital, so that it can stand in another sentence. */
  readonly clauseOf: (alike: Alike, before?: Alike) => string;
  /** What to do that a condition be met, as a clause; for several parties if they are named. */
  readonly clause: (condition: AimedCondition, ...parties: readonly AimedCondition["of"][]) => string;
  readonly condition: (condition: AimedCondition) => string;
  readonly capital: (text: string) => string;
  /** Phrases as one sentence without a capital; empty where there are none. */
  readonly sentence: (phrases: readonly string[]) => string;
  readonly room: Messages["room"];
}

/** Puts the parts of one verdict into sentences of one language. */
export interface Teller extends Sayer {
  /** What questions of one topic ask, as a part of a sentence. */
  readonly question: (alike: Questions) => string;
}

/** Puts what is found of some parties into the sentences of a language. Refuses an unknown system of units. */
export function sayerOf({ parties }: Pick<Verdict, "parties">, messages: Messages, units: UnitSystem): Sayer {
  const means = meansOf({ parties }, messages, units);
  const { figure, listed, kinds, named } = means;
  const capital = (text: string) => capitalised(text, messages.language);
  const clauseOf = (alike: Alike, before?: Alike) => findingTold(alike, means, before);
  const clause: Sayer["clause"] = (condition, ...of) => conditionTold(condition, means, of);
  return {
    ...{ listed, kinds, named, figure },
    parties: partiesTold(means),
    findings: (alike) => capital(clauseOf(alike)),
    clauseOf,
    clause,
    condition: (condition) => messages.demand([capital(clause(condition))], []),
    capital,
    sentence: (phrases) => (phrases.length > 0 ? messages.demand([phrases.join(", ")], []) : ""),
    room: messages.room,
  };
}

/** Puts the parts of a verdict into the sentences of a language. Refuses an unknown system of units. */
export function tellerOf(verdict: Verdict, messages: Messages, units: UnitSystem): Teller {
  const means = meansOf(verdict, messages, units);
  return {
    ...sayerOf(verdict, messages, units),
    question: (alike) => questionTold(alike, verdict, means),
  };
}

const meansOf = (verdict: Pick<Verdict, "parties">, messages: Messages, units: UnitSystem): Means => ({
  ...namingOf(verdict, messages),
  verdict,
  messages,
  figure: quantityWriter(messages, units),
});
