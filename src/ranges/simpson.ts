import type { PartialRange } from "./range";
import { widths } from "./widths";

/**
 * Simpson's index of two ranges, also called the overlap coefficient: the width they share over the width of the
 * narrower.
 *
 * Source (from memory): Simpson, G. G. (1960) Notes on the measurement of faunal resemblance, American Journal of Science
 * 258-A: 300–311, with widths in place of counts of species.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (one lies within the other); `undefined` if either has zero width or is
 * one-sided.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
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
  const width = widths(a, b);
  if (!width) return undefined;
  const narrower = Math.min(width.a, width.b);
  return narrower > 0 ? width.shared / narrower : undefined;
}
