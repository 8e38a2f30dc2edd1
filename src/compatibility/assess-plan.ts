import { refusal } from "../errors";
import type { Plan } from "../plan";
import { checkedPlan } from "../plan/inner";
import { type AssessOptions, type AssessWith, assessWith } from "./assess-options";
import type { Rule } from "./engine/rule/rule";
import { judgedPlan, judgementsOf } from "./judged-plan";
import { pairRules, planRules } from "./rules";
import { takenTogether } from "./taken-together";
import type { Verdict } from "./verdict";
import { verdictOf } from "./verdict-of";

/**
 * Whether a tank, its water and its animals go together: every plan rule, every pair rule on each two groups, and
 * those that are judged each way on each group with itself, unless it is of one animal that lives alone. A finding whose
 * condition the plan meets moves to `met`; what the plan does not say is `open`. Advice about typical animals; individuals
 * vary.
 *
 * @throws InvalidInputError with everything that is wrong with the plan: no tank or no group, more than 100 groups, a
 * size or count that cannot be, an unknown form, water that no aquarium holds, a key that nothing reads.
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
  const by = planRulesOf(options);
  const judged = judgedPlan(checkedPlan(plan), by);
  const { subjects } = judged;
  return verdictOf(subjects, takenTogether(subjects, judgementsOf(judged), by), by);
}

/** The rules and numbers by which a plan is judged. */
export function planRulesOf(options: AssessOptions): AssessWith {
  const by = assessWith(options, allRules);
  if (by.rules.length === 0) throw refusal("rules", "at least one rule", 0);
  return by;
}

const allRules: readonly Rule[] = /* @__PURE__ */ rulesOf(planRules, pairRules);

/** All rules, those about plans first. A call that bundlers can leave out where nobody judges plans. */
function rulesOf(ofPlans: readonly Rule[], ofPairs: readonly Rule[]): readonly Rule[] {
  return Object.freeze([...ofPlans, ...ofPairs]);
}
