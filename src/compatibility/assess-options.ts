import { InvalidInputError, objectOf, type Problem } from "../errors";
import { remembered } from "../remembered";
import { checkedRules } from "./engine/rule/checked-rules";
import { isOwn } from "./engine/rule/own-rule";
import type { Rule } from "./engine/rule/rule";
import { type ThresholdValues, thresholdValues } from "./threshold-values";

/** What a caller may change of how is judged. */
export interface ThresholdOptions {
  /** Numbers to decide by, in place of those of `thresholds`. */
  readonly thresholds?: Partial<ThresholdValues> | undefined;
}

/** What a caller may change of an assessment. */
export interface AssessOptions extends ThresholdOptions {
  /** The rules to judge by, in place of all of the library's. Those of an app have ids `x-…`. */
  readonly rules?: readonly Rule[] | undefined;
}

/** The rules and numbers that an assessment is made with. */
export interface AssessWith<Judging extends Rule = Rule> {
  readonly rules: readonly Judging[];
  readonly thresholds: ThresholdValues;
}

/**
 * What to judge with, or an {@link InvalidInputError} where the rules or options are none.
 *
 * @param isRun - Whether a rule is of the sort that is run: no other has to be the library's own.
 */
export function assessWith(
  rules: readonly Rule[],
  options: ThresholdOptions,
  isRun: (rule: Rule) => boolean = () => true,
): AssessWith {
  const { thresholds } = objectOf(options, "options");
  if (!areOwn(checkedRules(rules))) {
    const foreign = rules.flatMap((rule, index) =>
      isOwn(rule) || !isRun(rule) ? [] : foreignProblems(rule, index),
    );
    if (foreign.length > 0) throw new InvalidInputError(foreign);
  }
  return { rules, thresholds: thresholdValues(thresholds) };
}

const areOwn = /* @__PURE__ */ remembered((rules: readonly Rule[]) => rules.every(isOwn));

/** An app's rule does not pass for one of the library's. */
function foreignProblems(rule: Rule, index: number): readonly Problem[] {
  if (rule.id.startsWith("x-")) return [];
  const expected = "a rule of the library, or an id that begins with x-";
  return [{ path: ["rules", index, "id"], code: "word", expected, found: rule.id }];
}
