import type { Verdict } from "../../compatibility";
import type { Wanted } from "../../plan";
import { type CheckedPlan, isReading, readPlan } from "../../plan/inner";

/**
 * How far a plan is from where it would no longer do for a group, from 0 (at the very edge) to 1: the least over the figures
 * of tank and water that the group asks for. Of a span: how far from the nearer end, as a share of half its width; of a least
 * or a greatest alone: by what share the plan has more or less.
 *
 * @param plan - Of which tank and water are read.
 * @param verdict - What is told once the group is there.
 */
export function marginOf(plan: CheckedPlan, { met }: Verdict, group: number): number {
  return met.reduce((least, finding) => {
    const concerns = finding.from === undefined || finding.from === group || finding.to === group;
    if (!concerns || finding.weight !== "restricting" || !isReading(finding.condition.on)) return least;
    const figure = readPlan(plan, finding.condition.on);
    return typeof figure === "number" ? Math.min(least, slackIn(finding.condition.wanted, figure)) : least;
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
