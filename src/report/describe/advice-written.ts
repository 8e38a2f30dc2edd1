import { objectOf, oneOf, refuseOthers } from "../../checks";
import type { VerdictParty } from "../../compatibility";
import { ofPart, type Problem } from "../../errors";
import type { Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import type { PartialRange } from "../../ranges";
import { type Block, markdown, plainText } from "../layout";
import type { AdviceMessages, AdviceWords } from "../messages/advice-messages";
import { checkedAdvice } from "../messages/checked-messages";
import type { Messages } from "../messages/messages";
import type { UnitSystem } from "../quantities";
import { type Sayer, sayerOf } from "./teller";

/** How advice is written in a language that is given. */
export interface AdviceWritingOptions {
  /** Plain text in lines of at most 80 columns, or Markdown. Default `text`. */
  readonly format?: "text" | "markdown" | undefined;
  /** Default `metric`. Food is weighed in grams in each. */
  readonly units?: UnitSystem | undefined;
}

/** How advice is written. */
export interface AdviceDescribeOptions extends AdviceWritingOptions {
  /** The words of another language, in place of English. */
  readonly messages?: AdviceMessages | undefined;
}

/** Puts advice on one plan into sentences of one language; its parties are the groups. */
export interface Adviser extends Sayer {
  readonly words: AdviceWords;
  /** A weight to two digits. */
  readonly weight: (range: PartialRange, unit: keyof AdviceWords["units"]) => string;
}

const formats = { text: plainText, markdown };

/** Advice on a plan, which stands at a path of what was given, as text in a format, made of the blocks that are told of it. */
export const written = (
  messages: AdviceMessages,
  options: AdviceWritingOptions,
  plan: Plan,
  at: Problem["path"],
  blocksOf: (adviser: Adviser) => readonly Block[],
): string => writtenOf(messages, options, () => partiesOf(plan, at), blocksOf);

/** Advice on some animals, who are read once the options are known to be some, as text in a format. */
export const writtenOf = (
  messages: AdviceMessages,
  options: AdviceWritingOptions,
  parties: () => readonly VerdictParty[],
  blocksOf: (adviser: Adviser) => readonly Block[],
): string =>
  laidOut(checkedAdvice(messages, "messages"), options, parties, (sayer) =>
    blocksOf({
      ...sayer,
      words: messages.advice,
      weight: (range, unit) => weightIn(messages, range, unit),
    }),
  );

/** What is told of some animals in the words of a language, as text in a format. */
export function laidOut(
  messages: Messages,
  options: AdviceWritingOptions,
  parties: () => readonly VerdictParty[],
  blocksOf: (sayer: Sayer) => readonly Block[],
): string {
  const { format = "text", units = "metric", ...others } = objectOf(options, "options");
  refuseOthers(others);
  oneOf(format, Object.keys(formats), "options.format");
  return formats[format](blocksOf(sayerOf({ parties: parties() }, messages, units)));
}

/** The groups of a plan, which stands at a path of what was given, as they are told. */
export const partiesOf = (plan: Plan, at: Problem["path"]): readonly VerdictParty[] =>
  ofPart(at, () => checkedPlan(plan)).parties.map(({ animals, species: { taxonomy, names } }) => ({
    ...animals,
    name: taxonomy.name,
    names,
  }));

/** A weight to two digits: small fish eat less in a day than one decimal tells. */
function weightIn(
  { language, ranges, beforeUnit, advice }: AdviceMessages,
  { min = 0, max = min }: PartialRange,
  unit: keyof AdviceWords["units"],
): string {
  const numbers = new Intl.NumberFormat(language, { maximumSignificantDigits: 2 });
  const symbol = beforeUnit + advice.units[unit];
  const least = numbers.format(min);
  const most = numbers.format(max);
  if (least === most) return most + symbol;
  return min > 0 ? ranges.between(least, most, symbol) : ranges.atMost(most, symbol);
}
