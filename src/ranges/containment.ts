import type { PartialRange } from "./range";
import { widths } from "./widths";

/**
 * The share of range `a` that lies within range `b`: the width they share over the width of `a`. The only
 * measure here that depends on the order of its arguments.
 *
 * Source (from memory): Broder, A. Z. (1997) On the resemblance and containment of documents, Proceedings of Compression and
 * Complexity of Sequences: 21–29, with widths in place of counts.
 *
 * @param a The range whose share is asked for, in any unit.
 * @param b The range it may lie within, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (`a` lies within `b`); `undefined` if `a` has zero width or either is
 * one-sided.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
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
  const width = widths(a, b);
  return width && width.a > 0 ? width.shared / width.a : undefined;
}
