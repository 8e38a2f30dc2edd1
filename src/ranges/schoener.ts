import type { PartialRange } from "./range";
import { widths } from "./widths";

/**
 * Schoener's index of niche overlap, D = 1 − ½ Σ|p − q|, for two species that use their range evenly and
 * nothing beyond it.
 *
 * Under that assumption the use of a state is 1/width within the range and 0 outside, and as both uses sum to 1,
 * D = ∫ min(p, q): the width shared over the width of the wider range. Records that say where in its range a
 * species is usually found would give another value.
 *
 * Source (from memory): Schoener, T. W. (1970) Nonsynchronous spatial overlap of lizards in patchy habitats, Ecology 51:
 * 408–418.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns From 0 (no width shared) to 1 (the same range); `undefined` if either has zero width or is one-sided.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
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
  const width = widths(a, b);
  if (!width || width.a === 0 || width.b === 0) return undefined;
  return width.shared / Math.max(width.a, width.b);
}
