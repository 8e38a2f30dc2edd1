import { entryOrder, type FeedingPlan, feedingPlan } from "../../../src/advice";
import type { Plan } from "../../../src/plan";
import { samplePlans } from "../../plan/arbitrary";
import { runs } from "../../runs";

/** Plans of every sort, of few groups, with what is advised of them. */
export const advised = samplePlans(runs(40))
  .filter(({ groups }) => groups.length <= 6)
  .map((plan) => ({ plan, feeding: feedingPlan(plan), order: entryOrder(plan) }));

/** One species of a plan after the other. */
export const groupsOf = ({ groups }: Plan) => [...groups.keys()];

/** Feeding plans with what is seldom answered: whatever food, place and hour, held back from others, or reaching nobody. */
export function alteredFeedings(
  { feeding, plan }: { readonly feeding: FeedingPlan; readonly plan: Plan },
  changes: readonly Partial<FeedingPlan["offerings"][number]>[],
): readonly FeedingPlan[] {
  const all = groupsOf(plan);
  const offering = { food: "dry", place: "surface", reaches: all, holdBack: [] } as const;
  return changes.map((change) => ({
    ...feeding,
    offerings: [{ ...offering, ...change }],
    unreached: all,
    groups: all.map(() => ({ offerings: [0] })),
  }));
}
