import { refusal } from "../../errors";
import type { Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import type { AssessWith, Rule } from "../engine/rule/rule";
import { takenTogether } from "../verdict/taken-together";
import type { Verdict } from "../verdict/verdict";
import { verdictOf } from "../verdict/verdict-of";
import { assessWith, type ThresholdOptions } from "./assess-options";
import { judgedPlan } from "./judged-plan";

/**
 * As `assessPlan`, by the rules that are named: a bundle holds those alone. What no rule looks at is not judged, so
 * `suitable` says no more than that these rules have nothing against it, and no caution is told unless its rule is named.
 *
 * @param rules - Rules of `vivary/compatibility/rules` or of an app.
 * @throws InvalidInputError for what `assessPlan` refuses.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { assessPlanBy } from "vivary/compatibility";
 * import { longestRun, waterTemperature } from "vivary/compatibility/rules";
 *
 * const tank = { base: { shape: "rectangle", length: 40, width: 25 } } as const;
 * const groups = [{ species: danioRerio, unsexed: 10 }];
 * assessPlanBy([waterTemperature, longestRun], { tank, groups }).outcome; // => "conditional"
 * ```
 */
export function assessPlanBy(rules: readonly Rule[], plan: Plan, options: ThresholdOptions = {}): Verdict {
  return assessedBy(planRulesOf(rules, options), plan);
}

/** The verdict on a plan by what it is judged with. */
export function assessedBy(by: AssessWith, plan: Plan): Verdict {
  const { subjects, said } = judgedPlan(checkedPlan(plan), by);
  return verdictOf(subjects, said, takenTogether(subjects, said, by), by);
}

/** The rules and numbers by which a plan is judged. */
export function planRulesOf(rules: readonly Rule[], options: ThresholdOptions): AssessWith {
  const by = assessWith(rules, options);
  if (by.rules.length === 0) throw refusal("rules", "at least one rule", 0, "range");
  return by;
}
