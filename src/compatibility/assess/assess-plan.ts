import { objectOf } from "../../checks";
import { frozen } from "../../frozen";
import { once } from "../../made-once";
import type { Plan } from "../../plan";
import type { AssessWith, Rule } from "../engine/rule/rule";
import { pairRules, planRules } from "../rules";
import type { Verdict } from "../verdict/verdict";
import { type AssessOptions, namedRules } from "./assess-options";
import { assessedBy, planRulesOf } from "./assess-plan-by";

/**
 * Whether a tank, its water and its animals go together: every plan rule, every pair rule on each two groups, and
 * those that are judged each way on each group with itself, unless it is of one animal that lives alone. A finding whose
 * condition the plan meets moves to `met`; what the plan does not say is `open`. Advice about typical animals; individuals
 * vary.
 *
 * @throws InvalidInputError with everything that is wrong with the plan: no tank or no group, more than 100 groups, a
 * size or count that cannot be, an unknown form, water that no aquarium holds, a key that nothing reads;
 * and for an option that there is not.
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
  return assessedBy(assessPlanWith(options), plan);
}

/** What to judge plans with: the rules that are named, or all of the library's, those about plans first. */
export function assessPlanWith(options: AssessOptions): AssessWith {
  const { rules, ...others } = objectOf(options, "options");
  return planRulesOf(namedRules(rules, planRulesOf) ?? libraryRules(), others);
}

/** The rules by which options have plans judged: those they name, or all of the library's. */
export const rulesFor = ({ rules = libraryRules() }: AssessOptions): readonly Rule[] => rules;

const libraryRules = /* @__PURE__ */ once(() => frozen([...planRules, ...pairRules]));
