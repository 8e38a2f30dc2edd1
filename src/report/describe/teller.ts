import type { AimedCondition, Verdict } from "../../compatibility";
import type { WriteQuantity } from "../figure";
import type { Alike } from "../matters/alike";
import { isOfLawThere } from "../matters/by-rule";
import type { Messages } from "../messages/messages";
import { capitalised } from "../names";
import { quantityWriter, type UnitSystem } from "../quantities";
import { conditionTold } from "./condition-told";
import { findingTold } from "./finding-told";
import { type Naming, namingOf } from "./naming";
import { partiesTold } from "./parties-told";
import { type Questions, questionTold } from "./question-told";

/** Puts the parts of one verdict into sentences of one language. */
export interface Teller extends Naming {
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
  /** What questions of one topic ask, as a part of a sentence. */
  readonly question: (alike: Questions) => string;
  readonly capital: (text: string) => string;
  /** Phrases as one sentence without a capital; empty where there are none. */
  readonly sentence: (phrases: readonly string[]) => string;
  readonly room: Messages["room"];
  /** Whether the animals of a party kill or wound each other, whatever the tank. */
  readonly areRivals: (of: number | undefined) => boolean;
  /** Whether a law of the place where the tank stands names a party. */
  readonly isNamedByLaw: (of: number | undefined) => boolean;
}

/** Puts the parts of a verdict into the sentences of a language. Refuses an unknown system of units. */
export function tellerOf(verdict: Verdict, messages: Messages, units: UnitSystem): Teller {
  const naming = namingOf(verdict, messages);
  const figure = quantityWriter(messages, units);
  const means = { verdict, messages, figure, ...naming };
  const capital = (text: string) => capitalised(text, messages.language);
  const clauseOf = (alike: Alike, before?: Alike) => findingTold(alike, means, before);
  const clause: Teller["clause"] = (condition, ...parties) => conditionTold(condition, means, parties);
  return {
    ...naming,
    parties: partiesTold(means),
    figure,
    findings: (alike) => capital(clauseOf(alike)),
    clauseOf,
    clause,
    condition: (condition) => messages.demand([capital(clause(condition))], []),
    question: (alike) => questionTold(alike, means),
    capital,
    sentence: (phrases) => (phrases.length > 0 ? messages.demand([phrases.join(", ")], []) : ""),
    room: messages.room,
    areRivals: (of) =>
      verdict.findings.some(
        ({ rule, weight, from, to }) =>
          rule === "acts-own-kind" && weight === "blocking" && from === of && to === of,
      ),
    isNamedByLaw: (of) => verdict.findings.some((finding) => finding.from === of && isOfLawThere(finding)),
  };
}
