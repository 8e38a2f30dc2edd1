import { refusal } from "../errors";
import { ends } from "./ends";
import type { PartialRange, Range } from "./range";

/** The two ranges that decide what all share. Either `shared` or `gap` is present. */
export interface LimitingPair {
  /** Index of the range with the largest `min`, the first of equals. */
  readonly largestMin: number;
  /** Index of the range with the smallest `max`, the first of equals; the same index if one range lies in all others. */
  readonly smallestMax: number;
  /** What these two share, and with them all ranges. */
  readonly shared?: Range;
  /** What lies between these two, if they share nothing. */
  readonly gap?: Range;
}

/**
 * Which two of several ranges limit what all of them share: the one with the largest `min` and the one with the
 * smallest `max`. Intervals on a line share something if and only if these two do (Helly's theorem in one
 * dimension), so a change to any other range widens nothing.
 *
 * @param ranges One or more ranges, all in one unit.
 * @returns Both indices, with the shared range or the gap, in the unit of the ranges; `undefined` if no range
 * states a `min` or none a `max`, since no two then limit each other.
 * @throws InvalidInputError if there is no range, a range is reversed or states no end, or an end is not finite.
 *
 * @example
 * ```ts
 * import { limitingPair } from "vivary/ranges";
 *
 * const temperatures = [{ min: 22, max: 28 }, { min: 18, max: 24 }, { min: 20, max: 26 }];
 * limitingPair(temperatures); // => { largestMin: 0, smallestMax: 1, shared: { min: 22, max: 24 } }
 * limitingPair([...temperatures, { max: 20 }]); // => { largestMin: 0, smallestMax: 3, gap: { min: 20, max: 22 } }
 * ```
 */
export function limitingPair(ranges: readonly PartialRange[]): LimitingPair | undefined {
  if (ranges.length === 0) throw refusal("ranges", "at least one range", ranges);
  const all = ranges.map(ends);
  const mins = all.map((range) => range.min);
  const maxes = all.map((range) => range.max);
  const min = Math.max(...mins);
  const max = Math.min(...maxes);
  if (min === -Infinity || max === Infinity) return undefined;
  const pair = { largestMin: mins.indexOf(min), smallestMax: maxes.indexOf(max) };
  return min <= max ? { ...pair, shared: { min, max } } : { ...pair, gap: { min: max, max: min } };
}
