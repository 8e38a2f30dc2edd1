import { finite } from "../checks";
import { ends } from "./ends";
import type { PartialRange } from "./range";

/**
 * Whether a range holds a number or the whole of another range. Both ends of `outer` belong to it.
 *
 * @param outer The range that may hold the other, in any unit.
 * @param inner A number or a range, in the unit of `outer`. One-sided, it lies only in ranges open on that side.
 * @throws InvalidInputError if a number is not finite, or a range is reversed or states no end.
 *
 * @example
 * ```ts
 * import { contains } from "vivary/ranges";
 *
 * contains({ min: 22, max: 26 }, 26); // => true
 * contains({ min: 22, max: 26 }, { min: 24, max: 27 }); // => false
 * contains({ min: 22 }, { min: 24, max: 27 }); // => true
 * ```
 */
export function contains(outer: PartialRange, inner: PartialRange | number): boolean {
  const whole = ends(outer, "outer");
  const part = typeof inner === "number" ? { min: finite(inner, "inner"), max: inner } : ends(inner, "inner");
  return whole.min <= part.min && part.max <= whole.max;
}
