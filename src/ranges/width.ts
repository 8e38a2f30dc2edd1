import { refusal } from "../errors";
import { ends } from "./ends";
import type { PartialRange, Range } from "./range";

/**
 * The width of a range: `max` less `min`.
 *
 * @param range A range, in any unit.
 * @returns The width in the unit of the range, 0 or more; `undefined` for a one-sided range, which has none.
 * @throws InvalidInputError if the range is reversed, states no end, an end is not finite, or the width is
 * beyond the greatest number.
 *
 * @example
 * ```ts
 * import { width } from "vivary/ranges";
 *
 * width({ min: 22, max: 26 }); // => 4
 * width({ min: 22 }); // => undefined
 * ```
 */
export function width(range: Range): number;
export function width(range: PartialRange): number | undefined;
export function width(range: PartialRange): number | undefined {
  const { min, max } = ends(range, "range");
  if (min === -Infinity || max === Infinity) return undefined;
  const width = max - min;
  if (width < Infinity) return width;
  throw refusal("range", "ends less than 1.8e308 apart", range, "range");
}
