import { refusal } from "../errors";
import { ends } from "./ends";
import type { PartialRange, Range } from "./range";

/**
 * What two or more ranges share. Ranges that only touch share a range of zero width.
 *
 * @param a A range, in any unit.
 * @param b A range, in the unit of `a`.
 * @param more Further ranges, in the unit of `a`. A long list cannot be spread into arguments (JavaScript's stack
 * ends near 100,000 of them): there {@link limitingPair} takes it as it is.
 * @returns The shared range, one-sided if no range states its other end; `undefined` if they share nothing.
 * @throws InvalidInputError if a range is reversed, states no end, or an end is not finite.
 *
 * @example
 * ```ts
 * import { overlap } from "vivary/ranges";
 *
 * overlap({ min: 20, max: 26 }, { min: 24, max: 30 }); // => { min: 24, max: 26 }
 * overlap({ min: 20, max: 26 }, { min: 24, max: 30 }, { max: 25 }); // => { min: 24, max: 25 }
 * overlap({ min: 18, max: 22 }, { min: 24, max: 30 }); // => undefined
 * overlap({ min: 26, max: 20 }, { min: 24, max: 30 }); // throws
 * ```
 */
export function overlap(a: Range, b: Range, ...more: readonly Range[]): Range | undefined;
export function overlap(
  a: PartialRange,
  b: PartialRange,
  ...more: readonly PartialRange[]
): PartialRange | undefined;
export function overlap(...ranges: readonly PartialRange[]): PartialRange | undefined {
  if (ranges.length === 0) throw refusal("ranges", "at least one range", ranges);
  let min = -Infinity;
  let max = Infinity;
  for (let index = 0; index < ranges.length; index++) {
    const next = ends(ranges[index] as PartialRange, "ranges", index);
    if (next.min > min) min = next.min;
    if (next.max < max) max = next.max;
  }
  if (min > max) return undefined;
  if (min === -Infinity) return { max };
  return max === Infinity ? { min } : { min, max };
}
