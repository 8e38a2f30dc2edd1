import type { PartialRange } from "../range";
import { measured, type WidthFormula } from "./widths";

/** The formula of {@link containment}. */
export const containmentOf: WidthFormula = ({ a, shared }) => shared / a;

/**
 * The share of range `a` that lies within range `b`: the width they share over the width of `a`. The only
 * measure here that depends on the order of its arguments; all others follow from the two shares, s / a and s / b.
 *
 * Source: Broder, A. Z. (1997) On the resemblance and containment of documents, Proceedings of Compression and Complexity of
 * Sequences: 21–29, doi:10.1109/SEQUEN.1997.666900, with widths in place of counts.
 *
 * @param a The range whose share is asked for, in any unit.
 * @param b The range it may lie within, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (`a` lies within `b`); 0 wherever the ranges lie apart; `undefined` where they meet and one is
 * one-sided or has zero width.
 * @throws InvalidInputError if a range is reversed, states no end, an end is not finite, or widths pass the greatest
 * number.
 *
 * @example
 * ```ts
 * import { containment } from "vivary/ranges";
 *
 * containment({ min: 24, max: 28 }, { min: 20, max: 26 }); // => 0.5
 * containment({ min: 22, max: 24 }, { min: 20, max: 26 }); // => 1
 * ```
 */
export function containment(a: PartialRange, b: PartialRange): number | undefined {
  return measured(a, b, containmentOf);
}
