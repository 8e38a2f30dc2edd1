import { finite, objectOf } from "../checks";
import { refusal } from "../errors";
import type { PartialRange, Range } from "./range";

/**
 * Both ends of a range, infinite where absent, or an {@link InvalidInputError} where it is no range.
 *
 * @param index - Where it stands in the list of that name.
 */
export function ends(range: PartialRange, name: string, index?: number): Range {
  if (!isRange(range)) refuse(range, index === undefined ? name : `${name}[${index}]`);
  const { min = -Infinity, max = Infinity } = range;
  return { min, max };
}

function isRange(range: PartialRange): boolean {
  if (typeof range !== "object" || range === null) return false;
  const { min, max } = range;
  if (min === undefined) return Number.isFinite(max);
  return Number.isFinite(min) && (max === undefined || (Number.isFinite(max) && min <= max));
}

/** Says what is wrong with what is no range. */
function refuse(range: PartialRange, subject: string): never {
  const { min, max } = objectOf(range, subject, "a range { min, max }");
  if (min === undefined && max === undefined) throw refusal(subject, "a range with a min or a max", range);
  if (min !== undefined) finite(min, `${subject}.min`);
  if (max !== undefined) finite(max, `${subject}.max`);
  throw refusal(subject, "min at most max", range, "range");
}
