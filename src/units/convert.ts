import { amounts, convertBy } from "./converter";
import type { Unit, UnitLike } from "./unit";

/**
 * Converts an amount from one unit into another of the same measure, by the legal or standard definition of
 * both (each stands beside its factor in `src/units/measures`). Exact but for the rounding of the arithmetic,
 * a few units in the last place.
 *
 * Temperatures convert as readings, with their offsets; for a difference or tolerance use
 * {@link convertDifference}. Hardness units convert by what as much CaCO3 would bring, so `dH` serves general
 * and carbonate hardness alike. A year (`a`) is the Julian year of 365.25 days.
 *
 * @param value The amount, in `from`. Any finite number.
 * @param from The unit it is given in.
 * @param to The unit to express it in.
 * @returns The amount, in `to`. Equal units return `value` itself.
 * @throws InvalidInputError if the value is not finite (or too large to express in `to`), a unit is unknown, or
 * the two belong to different measures.
 *
 * @example
 * ```ts
 * import { convert } from "vivary/units";
 *
 * convert(24, "in", "cm"); // => 60.96
 * convert(29, "gal-us", "L"); // => 109.776941736
 * convert(77, "degF", "degC"); // => 25
 * convert(8, "dH", "mg/L-CaCO3"); // ≈ 143
 * convert(Number.NaN, "cm", "m"); // throws
 * ```
 */
export function convert<From extends Unit>(value: number, from: From, to: UnitLike<From>): number {
  return convertBy(amounts, value, from, to);
}
