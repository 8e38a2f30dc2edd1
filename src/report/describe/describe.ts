import type { Remedies } from "../../advice";
import { objectOf, oneOf, refuseOthers } from "../../checks";
import type { Verdict } from "../../compatibility";
import { ofPart } from "../../errors";
import { markdown, oneLine, plainText } from "../layout";
import { checkedMessages } from "../messages/checked-messages";
import { english } from "../messages/english";
import type { Messages } from "../messages/messages";
import type { UnitSystem } from "../quantities";
import { blocksOf } from "./blocks";
import { checkedVerdict, checkPart, type VerdictPart } from "./checked-verdict";
import { partTold } from "./part-told";
import { tellerOf } from "./teller";

/** How a verdict is written in a language that is given. */
export interface WritingOptions {
  /** Plain text in lines of at most 80 columns, or Markdown. Default `text`. */
  readonly format?: "text" | "markdown" | undefined;
  /** Default `metric`. */
  readonly units?: UnitSystem | undefined;
  /** What `remedies` of `vivary/advice` answers of the plan that the verdict is about: told after what must change. */
  readonly remedies?: Remedies | undefined;
}

/** How a verdict is written. */
export interface DescribeOptions extends WritingOptions {
  /** The words of another language, in place of English. An app that needs no English takes `describeIn`. */
  readonly messages?: Messages | undefined;
}

const formats = { text: plainText, markdown };

/**
 * A verdict in words, the decisive first: the answer, why not, what must change, what is worth knowing, what to look for,
 * what is not certain, what speaks for it, and the cautions. Text from records is escaped in Markdown.
 *
 * @throws InvalidInputError for what is no verdict, remedies of another plan, an unknown format or unit system.
 *
 * @example
 * ```ts
 * import { assessPair } from "vivary/compatibility";
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import { describe } from "vivary/report";
 *
 * const male = { species: bettaSplendens, sex: "male" } as const;
 * describe(assessPair(male, male)).split(":")[0]; // => "Unsuitable"
 * ```
 */
export function describe(verdict: Verdict, options: DescribeOptions = {}): string {
  const { messages = english, ...writing } = objectOf(options, "options");
  return describeIn(checkedMessages(messages, "options.messages"), verdict, writing);
}

/**
 * A verdict in the words of a language, as {@link describe} writes it. Whoever imports this and not `describe` ships the
 * language that is given, and no English.
 *
 * @throws InvalidInputError for what is no verdict, remedies of another plan, an unknown format or unit system.
 */
export function describeIn(messages: Messages, verdict: Verdict, options: WritingOptions = {}): string {
  const { format = "text", units = "metric", remedies, ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedMessages(messages, "messages");
  oneOf(format, Object.keys(formats), "options.format");
  const teller = tellerOf(checkedVerdict(verdict, messages), messages, units);
  return formats[format](blocksOf(verdict, teller, messages, remedies));
}

/** How one part of a verdict is written. */
export interface SentenceOptions extends Pick<DescribeOptions, "units" | "messages"> {}

/**
 * One finding, open question or condition of a verdict as a sentence on one line, without marks of any format: an app
 * that shows it in a page escapes it like other text.
 *
 * @param verdict - The verdict it belongs to: its parties are named.
 * @throws InvalidInputError for what is no part of this verdict or a condition that `isMet` refuses, and for an unknown unit
 * system.
 *
 * @example
 * ```ts
 * import { assessPair } from "vivary/compatibility";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { sentence } from "vivary/report";
 *
 * const verdict = assessPair({ species: danioRerio }, { species: danioRerio });
 * sentence(verdict, { on: "tank.lid", wanted: { oneOf: [true] } }); // => "Cover the tank without a gap."
 * ```
 */
export function sentence(verdict: Verdict, part: VerdictPart, options: SentenceOptions = {}): string {
  const { messages = english, ...writing } = objectOf(options, "options");
  return sentenceIn(checkedMessages(messages, "options.messages"), verdict, part, writing);
}

/** One part of a verdict in the words of a language, as {@link sentence} writes it, without shipping English. */
export function sentenceIn(
  messages: Messages,
  verdict: Verdict,
  part: VerdictPart,
  options: Pick<WritingOptions, "units"> = {},
): string {
  const { units = "metric", ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedMessages(messages, "messages");
  const teller = tellerOf(checkedVerdict(verdict, messages), messages, units);
  ofPart(["part"], () => checkPart(part, messages, verdict.parties.length));
  return oneLine(partTold(part, teller, messages));
}
