import { InvalidInputError, objectOf, type Problem } from "../errors";
import { checkedRules } from "./engine/rule/define-rule";
import type { Rule } from "./engine/rule/rule";
import { pairRules, planRules } from "./rules";
import { type ThresholdValues, thresholdValues } from "./thresholds";

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

/** What to judge with, or an {@link InvalidInputError} where the options are none. */
export function assessWith(options: AssessOptions, usual: readonly Rule[]): AssessWith {
  const { rules = usual, thresholds } = objectOf(options, "options");
  if (rules !== usual) {
    const foreign = checkedRules(rules).flatMap(foreignProblems);
    if (foreign.length > 0) throw new InvalidInputError(foreign);
  }
  return { rules, thresholds: thresholdValues(thresholds) };
}

const library: ReadonlySet<Rule> = /* @__PURE__ */ new Set<Rule>([...pairRules, ...planRules]);

/** An app's rule does not pass for one of the library's. */
function foreignProblems(rule: Rule, index: number): readonly Problem[] {
  if (library.has(rule) || rule.id.startsWith("x-")) return [];
  const expected = "a rule of the library, or an id that begins with x-";
  return [{ path: ["rules", index, "id"], code: "word", expected, found: rule.id }];
}
