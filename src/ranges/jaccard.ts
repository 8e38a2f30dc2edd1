import type { PartialRange } from "./range";
import { widths } from "./widths";

/**
 * The Jaccard index of two ranges: the width they share over the width they cover together.
 *
 * Source (from memory): Jaccard, P. (1912) The distribution of the flora in the alpine zone, New Phytologist 11: 37–50, with
 * widths in place of counts of species.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (the same range); `undefined` if both have zero width or either is
 * one-sided.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
 *
 * @example
 * ```ts
 * import { jaccard } from "vivary/ranges";
 *
 * jaccard({ min: 20, max: 26 }, { min: 24, max: 28 }); // => 0.25
 * jaccard({ min: 20, max: 26 }, { min: 24 }); // => undefined
 * ```
 */
export function jaccard(a: PartialRange, b: PartialRange): number | undefined {
  const width = widths(a, b);
  if (!width) return undefined;
  const covered = width.a + width.b - width.shared;
  return covered > 0 ? width.shared / covered : undefined;
}
