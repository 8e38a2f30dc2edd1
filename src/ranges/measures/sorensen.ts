import type { PartialRange } from "../range";
import { measured, type WidthFormula } from "./widths";

/** The formula of {@link sorensen}. */
export const sorensenOf: WidthFormula = ({ a, b, shared }) => (2 * shared) / (a + b);

/**
 * The Sørensen index of two ranges, also called Dice's: twice the width they share over the sum of both widths.
 *
 * Formula: S = 2s / (a + b), of widths a and b that share s.
 *
 * Source: of volumes, the R package hypervolume, hypervolume_overlap_statistics. The index is named after Sørensen, T. (1948)
 * A method of establishing groups of equal amplitude in plant sociology, Kongelige Danske Videnskabernes Selskab 5(4): 1–34,
 * where it counts species.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (the same range); 0 wherever the ranges lie apart; `undefined` where they meet and one is
 * one-sided or has zero width.
 * @throws InvalidInputError if a range is reversed, states no end, an end is not finite, or widths pass the greatest
 * number.
 *
 * @example
 * ```ts
 * import { sorensen } from "vivary/ranges";
 *
 * sorensen({ min: 20, max: 26 }, { min: 24, max: 28 }); // => 0.4
 * sorensen({ min: 20, max: 26 }, { min: 24 }); // => undefined
 * ```
 */
export function sorensen(a: PartialRange, b: PartialRange): number | undefined {
  return measured(a, b, sorensenOf);
}
