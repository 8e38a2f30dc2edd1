import type { Comparison } from "../official-requirement";
import { compare } from "./compare";

/**
 * Whether animals kept together are as many as asked; without a number, whether they are alone, and else open.
 *
 * @param counts - How many there are of each species.
 */
export function together(species: readonly string[], counts: readonly number[], least?: number): Comparison {
  const asked = least === undefined ? { min: 2 } : { min: least, max: least };
  const has = { of: "animals", min: Math.min(...counts), max: Math.max(...counts) } as const;
  const answer = compare(asked, has);
  return { species, asked, has, answer, ...(answer === "undetermined" && { open: { reason: "no-figure" } }) };
}
