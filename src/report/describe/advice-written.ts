import { objectOf, oneOf, refuseOthers } from "../../checks";
import { ofPart, type Problem } from "../../errors";
import type { Plan } from "../../plan";
import { type CheckedPlan, checkedPlan } from "../../plan/inner";
import type { PartialRange } from "../../ranges";
import type { WriteQuantity } from "../figure";
import { type Block, markdown, plainText } from "../layout";
import type { AdviceMessages, AdviceWords, ToldAnimals } from "../messages/advice-messages";
import { checkedAdvice } from "../messages/checked-messages";
import { quantityWriter, type UnitSystem } from "../quantities";
import { type Naming, namingOf } from "./naming";
import { partiesTold } from "./parties-told";

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

/** Puts advice on one plan into sentences of one language. */
export interface Adviser {
  readonly words: AdviceWords;
  /** All groups with their numbers. */
  readonly parties: readonly string[];
  readonly named: (groups: readonly number[]) => ToldAnimals;
  readonly listed: Naming["listed"];
  readonly figure: WriteQuantity;
  /** A weight to two digits. */
  readonly weight: (range: PartialRange, unit: keyof AdviceWords["units"]) => string;
}

const formats = { text: plainText, markdown };

/** Advice on a plan, which stands at a path of what was given, as text in a format, made of the blocks that are told of it. */
export function written(
  messages: AdviceMessages,
  options: AdviceWritingOptions,
  plan: Plan,
  at: Problem["path"],
  blocksOf: (adviser: Adviser) => readonly Block[],
): string {
  const { format = "text", units = "metric", ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedAdvice(messages, "messages");
  oneOf(format, Object.keys(formats), "options.format");
  const figure = quantityWriter(messages, units);
  const checked = ofPart(at, () => checkedPlan(plan));
  return formats[format](blocksOf(adviserOf(checked, messages, figure)));
}

function adviserOf({ parties }: CheckedPlan, messages: AdviceMessages, figure: WriteQuantity): Adviser {
  const verdict = {
    parties: parties.map(({ animals, species: { taxonomy, names } }) => ({
      ...animals,
      name: taxonomy.name,
      names,
    })),
  };
  const naming = namingOf(verdict, messages);
  return {
    words: messages.advice,
    parties: partiesTold({ verdict, messages, figure, ...naming }),
    named: naming.named,
    listed: naming.listed,
    figure,
    weight: (range, unit) => weightIn(messages, range, unit),
  };
}

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
