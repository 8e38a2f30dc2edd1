import { listOf } from "../../checks";
import { refusal } from "../../errors";
import { ends } from "../ends";
import type { PartialRange, Range } from "../range";

/** The two ranges that decide what all share. Either `shared` or `gap` is present. */
export interface LimitingPair {
  /** Index of the range with the largest `min`, the first of equals. */
  readonly largestMin: number;
  /** Index of the range with the smallest `max`, the first of equals; the same index if one range lies in all others. */
  readonly smallestMax: number;
  /** What these two share, and with them all ranges; in the unit of the ranges. */
  readonly shared?: Range | undefined;
  /** What lies between these two, if they share nothing; in the unit of the ranges. */
  readonly gap?: Range | undefined;
}

/**
 * Which two of several ranges limit what all of them share: the one with the largest `min` and the one with the
 * smallest `max`. Intervals on a line share something if and only if these two do (Helly's theorem in one
 * dimension), so a change to any other range widens nothing.
 *
 * @param items One or more ranges, all in one unit; any number of them.
 * @returns Both indices, with the shared range or the gap, in the unit of the ranges; `undefined` if no range
 * states a `min` or none a `max`, since no two then limit each other.
 * @throws InvalidInputError if there is no item, a range is missing, reversed or states no end, or an end is not
 * finite.
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
export function limitingPair(items: readonly PartialRange[]): LimitingPair | undefined;
/**
 * The same for things that have ranges, such as species.
 *
 * @param items One or more things, any number of them.
 * @param rangeOf Gives the range of each, all in one unit.
 *
 * @example
 * ```ts
 * import { limitingPair } from "vivary/ranges";
 *
 * const fishes = [{ name: "neon tetra", pH: { min: 5, max: 7 } }, { name: "guppy", pH: { min: 7, max: 8 } }];
 * limitingPair(fishes, (fish) => fish.pH); // => { largestMin: 1, smallestMax: 0, shared: { min: 7, max: 7 } }
 * ```
 */
export function limitingPair<Item>(
  items: readonly Item[],
  rangeOf: (item: Item) => PartialRange,
): LimitingPair | undefined;
export function limitingPair(
  items: readonly PartialRange[],
  rangeOf: (item: PartialRange) => PartialRange = (item) => item,
): LimitingPair | undefined {
  if (listOf(items, "items").length === 0) throw refusal("items", "at least one range", items);
  if (typeof rangeOf !== "function") throw refusal("rangeOf", "a function", rangeOf);

  let largestMin = { value: -Infinity, index: -1 };
  let smallestMax = { value: Infinity, index: -1 };
  for (const [index, item] of items.entries()) {
    const { min, max } = ends(rangeOf(item), "items", index);
    if (min > largestMin.value) largestMin = { value: min, index };
    if (max < smallestMax.value) smallestMax = { value: max, index };
  }
  return pairOf(largestMin, smallestMax);
}

/** An end of a range, infinite where no range has one, and the index of that range. */
interface End {
  readonly value: number;
  readonly index: number;
}

function pairOf(largestMin: End, smallestMax: End): LimitingPair | undefined {
  const [min, max] = [largestMin.value, smallestMax.value];
  if (min === -Infinity || max === Infinity) return undefined;
  const pair = { largestMin: largestMin.index, smallestMax: smallestMax.index };
  return min <= max ? { ...pair, shared: { min, max } } : { ...pair, gap: { min: max, max: min } };
}
