import type { Comparison } from "../official-requirement";
import { compare } from "./compare";

/** Whether animals kept together are as many as asked; without a number, whether they are alone, and else open. */
export function together(species: readonly string[], count: number, least?: number): Comparison {
  const asked = least === undefined ? { min: 2 } : { min: least, max: least };
  const has = { of: "animals", min: count, max: count } as const;
  const answer = compare(asked, has);
  return { species, asked, has, answer, ...(answer === "undetermined" && { open: { reason: "no-figure" } }) };
}
