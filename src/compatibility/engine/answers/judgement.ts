import type { AimedCondition, AnyFinding } from "../rule/finding";
import type { Rule } from "../rule/rule";
import { gravest, gravity } from "../rule/weight";
import type { Choice } from "../worlds";
import { decides, type OpenQuestion } from "./questions";

/** What one rule says of one party or pair, or of all. */
export interface Judgement {
  readonly findings: readonly AnyFinding[];
  readonly met: readonly AnyFinding[];
  readonly open: readonly OpenQuestion[];
  /** The least and the greatest gravity over what is disputed, missing or not given. */
  readonly least: number;
  readonly greatest: number;
  /** On the adopted values a rule cannot judge for want of a trait that is essential or could block; or individuals could do what blocks. */
  readonly undetermined: boolean;
  /** What it asks for, in each world. */
  readonly worlds: readonly AskingWorld[];
  /** What else it may ask for, since something is not known. */
  readonly mayAsk: readonly AimedCondition[];
  /** The conditions that the plan was held to, in any world. */
  readonly hangsOn: readonly AimedCondition[];
}

/** The conditions that a rule asks for in one world. */
export interface AskingWorld {
  readonly choices: readonly Choice[];
  readonly asks: readonly AimedCondition[];
}

/** Where nothing is asked for, whatever is true. */
export const nothingAsked: AskingWorld = { choices: [], asks: [] };

/** Of a rule that has nothing to say, whatever may come out. */
export const silent: Judgement = {
  findings: [],
  met: [],
  open: [],
  least: 0,
  greatest: 0,
  undetermined: false,
  worlds: [nothingAsked],
  mayAsk: [],
  hangsOn: [],
};

/**
 * A judgement of which something could not be judged: there it may be any of the rule's weights, and ask for nothing, or
 * for the utmost.
 *
 * @param mayAsk - The utmost that it may ask for there.
 * @param least - What stands whatever the answer: what is not known may add to it.
 */
export function leftOpen(
  rule: Rule,
  judgement: Judgement,
  questions: readonly OpenQuestion[],
  mayAsk: readonly AimedCondition[],
  least = 0,
): Judgement {
  const couldBe = gravity[gravest(rule.mayYield)];
  if (couldBe === 0) return { ...judgement, least };
  return {
    ...judgement,
    open: [
      ...judgement.open.filter((question) => !questions.some((asked) => isSame(question, asked))),
      ...questions,
    ],
    least,
    greatest: Math.max(judgement.greatest, couldBe),
    undetermined: judgement.undetermined || questions.some(decides),
    worlds: [...judgement.worlds, nothingAsked],
    mayAsk,
  };
}

/** Whether two questions ask for one trait of one party; the graver one is told. */
const isSame = (one: OpenQuestion, other: OpenQuestion): boolean =>
  "trait" in one &&
  "trait" in other &&
  one.trait === other.trait &&
  one.of === other.of &&
  one.reason === other.reason;
