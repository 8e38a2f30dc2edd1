import type { Condition, Wanted } from "../../plan";
import { type CheckedPlan, isReading, readPlan } from "../../plan/inner";

/**
 * How far a plan is from where it would no longer do for a group, from 0 (at the very edge) to 1: the least over the
 * figures of tank and water that the group asks for. Of a span: how far from the nearer end, as a share of half its width;
 * of a least or a greatest alone: by what share the plan has more or less. None where something of tank or water is not met
 * as it is.
 *
 * @param plan - Of which tank and water are read.
 * @param met - What it meets once the group is there, of all that concerns the group or none.
 * @param unmet - What it does not meet, of the same.
 */
export function marginOf(
  plan: CheckedPlan,
  { met, unmet }: { readonly met: readonly Condition[]; readonly unmet: readonly Condition[] },
): number {
  if (unmet.some(({ on }) => isReading(on))) return 0;
  return met.reduce((least, { on, wanted }) => {
    const figure = isReading(on) ? readPlan(plan, on) : undefined;
    return typeof figure === "number" ? Math.min(least, slackIn(wanted, figure)) : least;
  }, 1);
}

/** How far a figure lies from the ends of what is wanted. Nothing lies below zero: that is no end. */
function slackIn(wanted: Wanted, figure: number): number {
  if ("oneOf" in wanted) return 1;
  const { min = 0, max } = wanted;
  if (max === undefined) return min > 0 ? (figure - min) / min : 1;
  if (max <= min) return max > 0 ? 0 : 1;
  return min > 0 ? Math.min(figure - min, max - figure) / ((max - min) / 2) : (max - figure) / max;
}
