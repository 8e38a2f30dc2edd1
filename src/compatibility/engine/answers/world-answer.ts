import { OutsideDomainError, refusal } from "../../../errors";
import type { MeasureKinds } from "../rule/measures";
import type { Rule, RuleAnswer, RuleWay } from "../rule/rule";
import type { Weight } from "../rule/weight";
import { unknownTrait } from "../sides/view";
import type { ReadTrait } from "../worlds";
import { type Asking, type LocatedAnswer, type Standing, standingOf } from "./standing";

/** What a rule answers in one world. */
export interface WorldAnswer {
  readonly standing: readonly Standing[];
  /** A trait that the rule needs is not known. */
  readonly unknown: boolean;
  /** An equation does not hold there. */
  readonly outside: boolean;
}

/** Where a rule has nothing to say. */
export const nothing: WorldAnswer = { standing: [], unknown: false, outside: false };
const unknown: WorldAnswer = { standing: [], unknown: true, outside: false };
const outside: WorldAnswer = { standing: [], unknown: false, outside: true };

/** What a rule answers, and how that stands. */
export function answerOf(
  rule: Rule,
  run: () => RuleAnswer<RuleWay, Weight, MeasureKinds>,
  { sides, plan }: Pick<Asking, "sides" | "plan">,
  read: ReadTrait,
): WorldAnswer {
  try {
    const answers = run();
    if (answers === "unknown") return unknown;
    if (!Array.isArray(answers))
      throw refusal(`rules.${rule.id}`, 'a list of findings, or "unknown"', answers);
    if (answers.length === 0) return nothing;
    const standing = answers.map((answer: LocatedAnswer) => standingOf(rule, answer, sides, plan, read));
    return { standing, unknown: false, outside: false };
  } catch (error) {
    if (error === unknownTrait) return unknown;
    if (error instanceof OutsideDomainError) return outside;
    throw error;
  }
}
