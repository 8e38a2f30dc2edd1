import { objectOf } from "../errors";
import type { AssessOptions } from "./assess-pair";
import { assessedPlan } from "./assessed-plan";
import { judgePair } from "./judge-pair";
import { judgePlan } from "./judge-plan";
import type { Plan } from "./plan";
import { checkedRules, isPairRule, type Rule } from "./rule";
import { pairRules, planRules } from "./rules";
import { type Subject, subjectOf } from "./subject";
import { thresholdValues } from "./thresholds";
import type { Verdict } from "./verdict";
import { verdictOf } from "./verdict-of";

/**
 * Whether a tank, its water and its animals go together: every plan rule, every pair rule on each two groups, and
 * those that are judged each way on each group of two or more with itself. A finding whose condition the plan meets
 * moves to `met`; what the plan does not say is `open`. Advice about typical animals; individuals vary.
 *
 * @throws InvalidInputError for an empty plan, a size or count that cannot be, an unknown form; OutsideDomainError
 * for water no aquarium holds.
 *
 * @example
 * ```ts
 * import { assessPlan } from "vivary/compatibility";
 * import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
 *
 * const verdict = assessPlan({
 *   tank: {
 *     base: { shape: "rectangle", length: 80, width: 35 },
 *     height: 40,
 *     lid: true,
 *     cover: 0.3,
 *     flow: { calmest: "still", strongest: "moderate" },
 *     filter: { mediaArea: 1.5, age: 90 },
 *   },
 *   water: { temperature: 19, pH: 7, generalHardness: 10 },
 *   groups: [{ species: tanichthysAlbonubes, unsexed: 10 }],
 * });
 * verdict.outcome; // => "suitable"
 * ```
 */
export function assessPlan(plan: Plan, options: AssessOptions = {}): Verdict {
  const { rules: chosen = [...planRules, ...pairRules], thresholds: changed } = objectOf(options, "options");
  const rules = checkedRules<Rule>(chosen);
  const thresholds = thresholdValues(changed);
  const assessed = assessedPlan(plan);
  const subjects = assessed.parties.map(subjectOf);
  const judgements = rules.flatMap((rule) =>
    isPairRule(rule)
      ? encounters(subjects, rule.way).map(([from, to]) => judgePair(rule, from, to, thresholds, assessed))
      : judgePlan(rule, subjects, thresholds, assessed),
  );
  return verdictOf(subjects, judgements, rules, thresholds);
}

/** Who meets whom: every two groups, once or each way, and each way also a group of two or more with itself. */
function encounters(
  subjects: readonly Subject[],
  way: "mutual" | "each-way",
): readonly (readonly [Subject, Subject])[] {
  return subjects.flatMap((from) =>
    subjects
      .filter((to) => (way === "mutual" ? from.index < to.index : from !== to || (from.party.count ?? 1) > 1))
      .map((to) => [from, to] as const),
  );
}
