import { isMet, type Plan } from "../plan";
import type { AimedCondition } from "./engine/rule/finding";
import { meeting } from "./meeting";

/**
 * A plan changed so that it meets a condition of its verdict, in the facts that the condition names alone: for a button
 * beside it. Water goes to the middle of what to aim at, the tank grows and never shrinks, groups grow and never lose an
 * animal. The plan itself where it meets the condition already; undefined where no change of figures would do, such as
 * company for a shy fish: then it is for the keeper to choose. What else the change brings, only a verdict on it tells.
 *
 * @throws InvalidInputError for what is no plan or no condition on it.
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
 * planThatMeets(plan, { on: "group.count", of: 0, wanted: { min: 8 } })?.groups[0]?.unsexed; // => 8
 * planThatMeets(plan, { on: "tank.lid", wanted: { oneOf: [true] } })?.tank.lid; // => true
 * ```
 */
export function planThatMeets(plan: Plan, condition: AimedCondition): Plan | undefined {
  if (isMet(condition, plan) === true) return plan;
  const changed = meeting(plan, { ...condition, findings: [] });
  return isMet(condition, changed) === true ? changed : undefined;
}
