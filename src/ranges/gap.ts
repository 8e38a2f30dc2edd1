import { ends } from "./ends";
import type { PartialRange, Range } from "./range";

/**
 * What lies between two ranges that share nothing: from the end of the lower to the start of the higher.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @returns The range between them; `undefined` if they overlap or touch.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
 *
 * @example
 * ```ts
 * import { gap } from "vivary/ranges";
 *
 * gap({ min: 16, max: 22 }, { min: 24, max: 28 }); // => { min: 22, max: 24 }
 * gap({ min: 16, max: 24 }, { min: 24, max: 28 }); // => undefined
 * gap({ max: 6.5 }, { min: 7.5 }); // => { min: 6.5, max: 7.5 }
 * ```
 */
export function gap(a: PartialRange, b: PartialRange): Range | undefined {
  const first = ends(a, "a");
  const second = ends(b, "b");
  const min = Math.min(first.max, second.max);
  const max = Math.max(first.min, second.min);
  return min < max ? { min, max } : undefined;
}
