import { isMet, type Plan } from "../../plan";
import type { AssessOptions } from "../assess/assess-options";
import { assessPlanWith } from "../assess/assess-plan";
import { assessedBy } from "../assess/assess-plan-by";
import type { AimedCondition } from "../engine/rule/finding";
import { meeting } from "./meeting";
import { sexAsked } from "./sex-asked";

/**
 * A plan changed so that it meets a condition of its verdict, in the facts that the condition names alone: for a button
 * beside it. Water goes where `setPoint` has it for these animals, within what to aim at, and its hottest and coolest no
 * further than is asked; the tank grows and never shrinks, groups grow and never lose an animal. Several males that are no
 * rivals are joined by males, others by females, or by males where a verdict has them stay alone. The plan itself where it
 * meets the condition already; undefined where no change of figures would do, such as company for a shy fish, or females to
 * each male among animals of unknown sex: then it is for the keeper to choose, or to find out. What else the change brings,
 * only a verdict on it tells.
 *
 * @param options - What the verdict was made with, where that is not the library's own.
 * @throws InvalidInputError for what is no plan or no condition on it, and for what `assessPlan` refuses.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { planThatMeets } from "vivary/compatibility";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   groups: [{ species: danioRerio, unsexed: 4 }],
 * } as const;
 * planThatMeets({ on: "group.count", of: 0, wanted: { min: 8 } }, plan)?.groups[0]?.unsexed; // => 8
 * planThatMeets({ on: "tank.lid", wanted: { oneOf: [true] } }, plan)?.tank.lid; // => true
 * ```
 */
export function planThatMeets(
  condition: AimedCondition,
  plan: Plan,
  options: AssessOptions = {},
): Plan | undefined {
  const by = assessPlanWith(options);
  if (isMet(condition, plan) === true) return plan;
  const sexOf = (of: number) => sexAsked(assessedBy(by, plan), of);
  const changed = meeting(plan, { ...condition, findings: [] }, { sexOf, thresholds: options.thresholds });
  return isMet(condition, changed) === true ? changed : undefined;
}
