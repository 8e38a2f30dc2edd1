import { judgePair } from "./engine";
import { assessedParty } from "./party";
import type { Party } from "./plan";
import { isPairRule, type Rule } from "./rule";
import { pairRules } from "./rules";
import { subjectOf } from "./subject";
import { type ThresholdValues, thresholdValues } from "./thresholds";
import { type Verdict, verdictOf } from "./verdict";

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
 * whole number.
 *
 * @example
 * ```ts
 * import { assessPair } from "vivary/compatibility";
 * import { bettaSplendens } from "vivary/catalog";
 *
 * const male = { species: bettaSplendens, sex: "male" } as const;
 * assessPair(male, male).outcome; // => "unsuitable"
 * ```
 */
export function assessPair(a: Party, b: Party, options: AssessOptions = {}): Verdict {
  const subjects = [a, b].map((party, index) =>
    subjectOf(assessedParty(party, index === 0 ? "a" : "b"), index),
  );
  const [first, second] = subjects as [(typeof subjects)[0], (typeof subjects)[0]];
  const rules = (options.rules ?? pairRules).filter(isPairRule);
  const thresholds = thresholdValues(options.thresholds);
  const judgements = rules.flatMap((rule) =>
    rule.way === "mutual"
      ? [judgePair(rule, first, second, thresholds)]
      : [judgePair(rule, first, second, thresholds), judgePair(rule, second, first, thresholds)],
  );
  return verdictOf(subjects, judgements, rules, thresholds);
}
