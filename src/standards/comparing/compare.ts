import type { Range } from "../../ranges";
import type { Asked, Comparison } from "../official-requirement";

/**
 * Whether something reaches the least that is asked, at both ends of either.
 * Undetermined where it reaches the lower end of what is asked and the upper is unknown.
 */
export function compare(asked: Asked, has: Range): Comparison["answer"] {
  const reaches = (amount: number, least: number) => (asked.beyond ? amount > least : amount >= least);
  if (!reaches(has.max, asked.min)) return "not-met";
  if (asked.max === undefined) return "undetermined";
  return reaches(has.min, asked.max) ? "met" : "depends";
}
