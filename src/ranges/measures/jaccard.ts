import type { PartialRange } from "../range";
import { measured, type WidthFormula } from "./widths";

/** The formula of {@link jaccard}. */
export const jaccardOf: WidthFormula = ({ a, b, shared }) => shared / (a + b - shared);

/**
 * The Jaccard index of two ranges: the width they share over the width they cover together.
 *
 * Formula: J = s / (a + b − s), of widths a and b that share s.
 *
 * Source: of volumes, the R package hypervolume, hypervolume_overlap_statistics. The index is named after Jaccard, P. (1912)
 * The distribution of the flora in the alpine zone, New Phytologist 11(2), where it counts species.
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
 * import { jaccard } from "vivary/ranges";
 *
 * jaccard({ min: 20, max: 26 }, { min: 24, max: 28 }); // => 0.25
 * jaccard({ min: 20, max: 26 }, { min: 24 }); // => undefined
 * jaccard({ min: 20, max: 26 }, { min: 28 }); // => 0
 * ```
 */
export function jaccard(a: PartialRange, b: PartialRange): number | undefined {
  return measured(a, b, jaccardOf);
}
