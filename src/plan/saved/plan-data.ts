import { checkedPlan } from "../checked-plan";
import type { Group, Plan } from "../plan";
import { format } from "./formats";

/** A group as it is saved: the species by its id. */
export type GroupData = Omit<Group, "species"> & { readonly species: string };

/** A plan as it is saved: plain JSON, the species by their ids. */
export interface PlanData extends Omit<Plan, "groups"> {
  /** The format it is saved in. */
  readonly format: 1;
  readonly groups: readonly GroupData[];
}

/**
 * A plan as plain JSON, to be saved and to come back by `parsePlan`. Species stand by id, forms by theirs.
 *
 * @throws InvalidInputError with everything that is wrong with the plan.
 *
 * @example
 * ```ts
 * import { findSpecies } from "vivary/catalog";
 * import { planData } from "vivary/plan";
 *
 * const [longFin] = findSpecies("long-fin tiger barb");
 * const data = longFin && planData({
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   groups: [{ species: longFin, unsexed: 8 }],
 * });
 * data?.groups; // => [{ species: "puntigrus-tetrazona", form: "long-fin", unsexed: 8 }]
 * ```
 */
export function planData(plan: Plan): PlanData {
  const { parties } = checkedPlan(plan);
  const groups = plan.groups.map(({ species, form: _, ...group }, index) => {
    const form = parties[index]?.species.form;
    return { species: species.id, ...(form !== undefined && { form }), ...group };
  });
  return JSON.parse(JSON.stringify({ format, ...plan, groups }));
}
