import { objectOf } from "../../checks";
import type { Party } from "../../plan";
import { pairRules } from "../rules";
import type { Verdict } from "../verdict/verdict";
import { type AssessOptions, namedRules } from "./assess-options";
import { assessPairBy, pairRulesOf } from "./assess-pair-by";

/**
 * Whether two kinds of animals can be kept together, whatever the tank: the findings of every pair rule, the outcome
 * on the adopted facts, and the bounds over what is disputed or missing. What the animals of one party do to each other
 * is judged where its `count` is two or more; where it has none, that is left to `assessPlan`, as is how many belong
 * together. Advice about typical animals; individuals vary.
 *
 * @param a - One party; without sex or stage, adults of both sexes.
 * @param b - The other party; may be of the same species.
 * @throws InvalidInputError for an unknown form, sex or stage, a length that is not above zero, a count that is no
 * whole number, an option that there is not; and where none of the rules is about pairs.
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
  const { rules, ...others } = objectOf(options, "options");
  return assessPairBy(namedRules(rules, pairRulesOf) ?? pairRules, a, b, others);
}
