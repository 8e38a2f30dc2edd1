import { refusal } from "../errors";
import type { PartialRange, Range } from "./range";

/** Both ends of a range, infinite where absent, or an {@link InvalidInputError} where it is no range. */
export function ends(range: PartialRange, name: string | number): Range {
  const { min, max } = range ?? {};
  const low = min ?? -Infinity;
  const high = max ?? Infinity;
  if (Number.isFinite(min ?? max) && Number.isFinite(max ?? min) && low <= high)
    return { min: low, max: high };
  throw refusal(`range ${name}`, "finite min at most max", `${min} to ${max}`);
}
