import { offeringsTaken } from "../../compatibility/inner";
import type { Offering, Plan } from "../../plan";
import { adoptedTraits, type CheckedPlan, checkedPlan, holds, speciesOf } from "../../plan/inner";
import type { Appetite } from "./appetites";

/** An offering, and the appetites that it sates by itself, by index. */
export interface Reaching {
  readonly offering: Offering;
  readonly reaches: readonly number[];
}

/**
 * The offerings that sate some appetite by themselves; of those that sate the same the plainest: freely before apart, by day
 * before dusk and night, dry before frozen and live. What is given apart reaches only those that faster ones outpace.
 */
export function reaching(plan: Plan, appetites: readonly Appetite[]): readonly Reaching[] {
  const plainest = new Map<string, Reaching>();
  const checked = checkedPlan(plan);
  for (const offering of offeringsTaken(plan.groups.map(speciesOf))) {
    const reaches = reachedBy(offering, checked, appetites);
    const key = reaches.join();
    if (reaches.length > 0 && !plainest.has(key)) plainest.set(key, { offering, reaches });
  }
  return [...plainest.values()];
}

/** The appetites of which an offering meets all conditions, with a food that will do. */
function reachedBy(offering: Offering, plan: CheckedPlan, appetites: readonly Appetite[]): readonly number[] {
  const fed = { ...plan, offerings: [offering] };
  const trait = adoptedTraits(fed);
  const isSated = ({ isOutpaced, staples, conditions }: Appetite) =>
    (isOutpaced || !offering.apart) &&
    (!staples || staples.includes(offering.food)) &&
    conditions.every((condition) => holds(condition, fed, trait));
  return appetites.flatMap((appetite, index) => (isSated(appetite) ? [index] : []));
}

/**
 * The fewest offerings that sate every appetite that any sates; of equally few those that stand first. Each step takes the
 * first that is still hungry and tries all that reach it, and leaves off where it comes to as many as were found: exact.
 */
export function fewest(found: readonly Reaching[]): readonly Reaching[] {
  let best = found;
  const search = (chosen: readonly Reaching[], hungry: readonly number[]) => {
    const [first] = hungry;
    if (first === undefined) {
      if (chosen.length < best.length) best = chosen;
      return;
    }
    if (chosen.length + 1 >= best.length) return;
    for (const one of found.filter(({ reaches }) => reaches.includes(first)))
      search(
        [...chosen, one],
        hungry.filter((of) => !one.reaches.includes(of)),
      );
  };
  search([], [...new Set(found.flatMap(({ reaches }) => reaches))]);
  return best;
}
