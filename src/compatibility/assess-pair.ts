import { objectOf } from "../errors";
import { judgePair } from "./judge-pair";
import { checkedParty, withKin } from "./party";
import type { Party } from "./plan";
import { checkedRules, isPairRule, type Rule } from "./rule";
import { pairRules } from "./rules";
import { type Subject, subjectOf } from "./subject";
import { type ThresholdValues, thresholdValues } from "./thresholds";
import type { Verdict } from "./verdict";
import { verdictOf } from "./verdict-of";

/** What a caller may change of an assessment. */
export interface AssessOptions {
  /** The rules to judge by, in place of all of the library's. */
  readonly rules?: readonly Rule[] | undefined;
  /** Numbers to decide by, in place of those of `thresholds`. */
  readonly thresholds?: Partial<ThresholdValues> | undefined;
}

/**
 * Whether two kinds of animals can be kept together, whatever the tank: the findings of every pair rule, the outcome
 * on the adopted facts, and the bounds over what is disputed or missing. Advice about typical animals; individuals vary.
 *
 * @param a - One party; without sex or stage, adults of both sexes.
 * @param b - The other party; may be of the same species.
 * @throws InvalidInputError for an unknown form, sex or stage, a length that is not above zero, a count that is no
 * whole number; and where none of the rules is about pairs.
 *
 * @example
 * ```ts
 * import { assessPair } from "vivary/compatibility";
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 *
 * const male = { species: bettaSplendens, sex: "male" } as const;
 * assessPair(male, male).outcome; // => "unsuitable"
 * ```
 */
export function assessPair(a: Party, b: Party, options: AssessOptions = {}): Verdict {
  const { rules: chosen = pairRules, thresholds: changed } = objectOf(options, "options");
  const rules = checkedRules<Rule>(chosen).filter(isPairRule);
  const thresholds = thresholdValues(changed);
  const [first, second] = withKin([checkedParty(a, "a"), checkedParty(b, "b")]).map(subjectOf) as [
    Subject,
    Subject,
  ];
  const judgements = rules.flatMap((rule) =>
    rule.way === "mutual"
      ? [judgePair(rule, first, second, thresholds)]
      : [judgePair(rule, first, second, thresholds), judgePair(rule, second, first, thresholds)],
  );
  return verdictOf([first, second], judgements, rules, thresholds);
}
