import type { PartialRange } from "../range";
import { measured, type WidthFormula } from "./widths";

/** The formula of {@link pianka}. */
export const piankaOf: WidthFormula = ({ a, b, shared }) => Math.sqrt(shared / a) * Math.sqrt(shared / b);

/**
 * Pianka's index of niche overlap, O = Σpq / √(Σp² Σq²), for two species that use their range evenly and nothing
 * beyond it.
 *
 * Under that assumption the use of a state is 1/width within the range and 0 outside, which makes O the width
 * shared over the geometric mean of both widths, s / √(ab). Records that say where in its range a species is usually
 * found would give another value, and so does counting use in bins.
 *
 * Source: Pianka, E. R. (1973) The structure of lizard communities, Annual Review of Ecology and Systematics 4:
 * 53–74.
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
 * import { pianka } from "vivary/ranges";
 *
 * pianka({ min: 20, max: 28 }, { min: 24, max: 26 }); // => 0.5
 * pianka({ min: 20, max: 28 }, { min: 24, max: 24 }); // => undefined
 * ```
 */
export function pianka(a: PartialRange, b: PartialRange): number | undefined {
  return measured(a, b, piankaOf);
}
