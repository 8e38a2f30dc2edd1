import { refusal } from "../errors";
import type { Party } from "../plan";
import { checkedPair } from "../plan/inner";
import { type AssessOptions, type AssessWith, assessWith } from "./assess-options";
import { pairJudge } from "./engine/judge-pair";
import { isPairRule, type PairRule } from "./engine/rule/rule";
import { subjectOf } from "./engine/subject";
import { pairRules } from "./rules";
import { takenTogether } from "./taken-together";
import type { Verdict } from "./verdict";
import { verdictOf } from "./verdict-of";

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
  const by = pairRulesOf(options);
  const [one, other] = checkedPair(a, b);
  const [first, second] = [subjectOf(one, 0), subjectOf(other, 1)];
  const judgements = by.rules.flatMap((rule) => {
    const judge = pairJudge(rule, by.thresholds);
    const there = judge([first, second]);
    return rule.way === "mutual" ? [there] : [there, judge([second, first])];
  });
  const subjects = [first, second];
  return verdictOf(subjects, takenTogether(subjects, judgements, by), by);
}

/** The rules and numbers that pairs are judged with. */
interface AssessPairWith extends AssessWith {
  readonly rules: readonly PairRule[];
}

/** What to judge pairs with, or an {@link InvalidInputError} where none of the rules is about pairs. */
export function pairRulesOf(options: AssessOptions): AssessPairWith {
  const { rules, thresholds } = assessWith(options, pairRules, isPairRule);
  const ofPairs = rules.filter(isPairRule);
  if (ofPairs.length === 0) throw refusal("rules", "at least one rule about pairs", rules.length);
  return { rules: ofPairs, thresholds };
}
