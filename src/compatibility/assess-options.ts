import { InvalidInputError, objectOf, type Problem } from "../errors";
import { checkedRules } from "./engine/rule/define-rule";
import type { Rule } from "./engine/rule/rule";
import { type ThresholdValues, thresholdValues } from "./threshold-values";

/** What a caller may change of an assessment. */
export interface AssessOptions {
  /** The rules to judge by, in place of all of the library's. Those of an app have ids `x-…`. */
  readonly rules?: readonly Rule[] | undefined;
  /** Numbers to decide by, in place of those of `thresholds`. */
  readonly thresholds?: Partial<ThresholdValues> | undefined;
}

/** The rules and numbers that an assessment is made with. */
export interface AssessWith {
  readonly rules: readonly Rule[];
  readonly thresholds: ThresholdValues;
}

/**
 * What to judge with, or an {@link InvalidInputError} where the options are none.
 *
 * @param usual - The library's rules of the sort that is run, by which is judged where none are named.
 * @param isRun - Whether a rule is of that sort: no other passes for anything.
 */
export function assessWith(
  options: AssessOptions,
  usual: readonly Rule[],
  isRun: (rule: Rule) => boolean = () => true,
): AssessWith {
  const { rules = usual, thresholds } = objectOf(options, "options");
  if (rules !== usual) {
    const foreign = checkedRules(rules).flatMap((rule, index) =>
      usual.includes(rule) || !isRun(rule) ? [] : foreignProblems(rule, index),
    );
    if (foreign.length > 0) throw new InvalidInputError(foreign);
  }
  return { rules, thresholds: thresholdValues(thresholds) };
}

/** An app's rule does not pass for one of the library's. */
function foreignProblems(rule: Rule, index: number): readonly Problem[] {
  if (rule.id.startsWith("x-")) return [];
  const expected = "a rule of the library, or an id that begins with x-";
  return [{ path: ["rules", index, "id"], code: "word", expected, found: rule.id }];
}
