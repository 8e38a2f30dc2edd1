import type { PartialRange } from "../range";
import { measured, type WidthFormula } from "./widths";

/** The formula of {@link schoener}. */
export const schoenerOf: WidthFormula = ({ a, b, shared }) => shared / Math.max(a, b);

/**
 * Schoener's index of niche overlap, D = 1 − ½ Σ|p − q|, for two species that use their range evenly and
 * nothing beyond it.
 *
 * Under that assumption the use of a state is 1/width within the range and 0 outside, and as both uses sum to 1,
 * D = ∫ min(p, q): the width shared over the width of the wider range, s / max(a, b). That integral is what statistics
 * calls the coefficient of overlapping, so that for two even uses both are one number; so is the proportional similarity
 * that some programs call Czekanowski's. Records that say where in its range a species is usually found would give
 * another value, and so does counting use in bins: of 20 to 26 °C and 24 to 28 °C this gives 1/3, and bins of one whole
 * degree 3/7.
 *
 * Source: Schoener, T. W. (1970) Nonsynchronous spatial overlap of lizards in patchy habitats, Ecology 51: 408–418, as the
 * R packages FSAmisc (dietOverlap, by D. H. Ogle) and spaa (niche.overlap.pair) give formula and reference.
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
 * import { schoener } from "vivary/ranges";
 *
 * schoener({ min: 20, max: 28 }, { min: 24, max: 26 }); // => 0.25
 * schoener({ min: 20, max: 28 }, { min: 24, max: 24 }); // => undefined
 * ```
 */
export function schoener(a: PartialRange, b: PartialRange): number | undefined {
  return measured(a, b, schoenerOf);
}
