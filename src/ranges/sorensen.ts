import type { PartialRange } from "./range";
import { widths } from "./widths";

/**
 * The Sørensen index of two ranges, also called Dice's: twice the width they share over the sum of both widths.
 *
 * Source (from memory): Sørensen, T. (1948) A method of establishing groups of equal amplitude in plant sociology based on
 * similarity of species content, Biologiske Skrifter 5(4): 1–34, with widths in place of counts of species.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (the same range); `undefined` if both have zero width or either is
 * one-sided.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
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
  const width = widths(a, b);
  if (!width) return undefined;
  const both = width.a + width.b;
  return both > 0 ? (2 * width.shared) / both : undefined;
}
