import { InvalidInputError } from "../errors";
import type { PartialRange, Range } from "./range";

/** Both ends of a range, infinite where absent, or an {@link InvalidInputError} where it is no range. */
export function ends(range: PartialRange, name: string | number): Range {
  const { min, max } = range ?? {};
  const low = min ?? -Infinity;
  const high = max ?? Infinity;
  const stated = [min ?? max, max ?? min];
  if (stated.every(Number.isFinite) && low <= high) return { min: low, max: high };
  throw new InvalidInputError(`range ${name}`, "finite min at most max", `${min} to ${max}`);
}
