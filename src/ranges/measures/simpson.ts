import type { PartialRange } from "../range";
import { measured, type WidthFormula } from "./widths";

/** The formula of {@link simpson}. */
export const simpsonOf: WidthFormula = ({ a, b, shared }) => shared / Math.min(a, b);

/**
 * Simpson's index of two ranges: the width they share over the width of the narrower.
 *
 * Formula: s / min(a, b), of widths a and b that share s. Of sets it is also called the Szymkiewicz–Simpson or overlap
 * coefficient; what statistics calls the coefficient of overlapping is another measure, {@link schoener}.
 *
 * Source: Simpson, G. G. (1960) Notes on the measurement of faunal resemblance, American Journal of Science 258-A: 300–311,
 * as the R package proxy (similarities.R) gives formula and reference, with widths in place of counts of species; the same
 * formula in Palaeontologia Electronica 14(1) of 2011, article 238, table 1.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (one lies within the other); 0 wherever the ranges lie apart; `undefined` where they meet and one is
 * one-sided or has zero width.
 * @throws InvalidInputError if a range is reversed, states no end, an end is not finite, or widths pass the greatest
 * number.
 *
 * @example
 * ```ts
 * import { simpson } from "vivary/ranges";
 *
 * simpson({ min: 20, max: 26 }, { min: 24, max: 28 }); // => 0.5
 * simpson({ min: 20, max: 26 }, { min: 24, max: 24 }); // => undefined
 * ```
 */
export function simpson(a: PartialRange, b: PartialRange): number | undefined {
  return measured(a, b, simpsonOf);
}
