import type { PartialRange } from "./range";
import { widths } from "./widths";

/**
 * Pianka's index of niche overlap, O = Σpq / √(Σp² Σq²), for two species that use their range evenly and nothing
 * beyond it.
 *
 * Under that assumption the use of a state is 1/width within the range and 0 outside, which makes O the width
 * shared over the geometric mean of both widths. Records that say where in its range a species is usually found
 * would give another value.
 *
 * Source: Pianka, E. R. (1973) The structure of lizard communities, Annual Review of Ecology and Systematics 4:
 * 53–74.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (the same range); `undefined` if either has zero width or is one-sided.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
 *
 * @example
 * ```ts
 * import { pianka } from "vivary/ranges";
 *
 * pianka({ min: 20, max: 28 }, { min: 24, max: 26 }); // => 0.5
 * pianka({ min: 20, max: 28 }, { min: 24, max: 24 }); // => undefined
 * ```
 */
export function pianka(a: PartialRange, b: PartialRange): number | undefined {
  const width = widths(a, b);
  if (!width || width.a === 0 || width.b === 0) return undefined;
  return Math.sqrt(width.shared / width.a) * Math.sqrt(width.shared / width.b);
}
