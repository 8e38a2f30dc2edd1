import { finite, objectOf, refusal } from "../errors";
import type { PartialRange, Range } from "./range";

/** Both ends of a range, infinite where absent, or an {@link InvalidInputError} where it is no range. */
export function ends(range: PartialRange, subject: string): Range {
  const { min, max } = objectOf(range, subject, "a range { min, max }");
  if (min === undefined && max === undefined) throw refusal(subject, "a range with a min or a max", range);
  const low = min === undefined ? -Infinity : finite(min, `${subject}.min`);
  const high = max === undefined ? Infinity : finite(max, `${subject}.max`);
  if (low > high) throw refusal(subject, "min at most max", range, "range");
  return { min: low, max: high };
}
