import { objectOf, refuseOthers } from "../../checks";
import { ofPart } from "../../errors";
import { checkedRules } from "../engine/rule/checked-rules";
import type { AssessWith, Rule } from "../engine/rule/rule";
import { type ThresholdValues, thresholdValues } from "../threshold-values";

/** What a caller may change of how is judged. */
export interface ThresholdOptions {
  /**
   * Numbers to decide by, in place of those of `thresholds`: shares of something from 0 to 1, all others from 0 on, and of
   * two about the same thing the stricter one, such as `likelyPrey`, at most as great as the other, such as `possiblePrey`.
   */
  readonly thresholds?: Partial<ThresholdValues> | undefined;
}

/** What a caller may change of an assessment. */
export interface AssessOptions extends ThresholdOptions {
  /** The rules to judge by, in place of all of the library's: some of these, and those that `defineRule` made. */
  readonly rules?: readonly Rule[] | undefined;
}

/** The rules that options name, checked; a refusal says that they stand there. */
export const namedRules = (
  rules: readonly Rule[] | undefined,
  checked: (rules: readonly Rule[], options: ThresholdOptions) => AssessWith,
): readonly Rule[] | undefined =>
  rules === undefined ? undefined : ofPart(["options"], () => checked(rules, {}).rules);

/** What to judge with, or an {@link InvalidInputError} where the rules or options are none. */
export function assessWith(rules: readonly Rule[], options: ThresholdOptions): AssessWith {
  const { thresholds, ...others } = objectOf(options, "options");
  refuseOthers(others);
  return { rules: checkedRules(rules), thresholds: thresholdValues(thresholds) };
}
