import { refusal } from "../errors";
import { measureIfKnown, unitsFor } from "./converter";
import type { Measure, Unit } from "./unit";

/**
 * What a unit measures. Two units convert into each other if and only if this is the same for both.
 *
 * @param unit The id of the unit.
 * @throws InvalidInputError if the unit is unknown.
 *
 * @example
 * ```ts
 * import { measureOf } from "vivary/units";
 *
 * measureOf("gal-us"); // => "volume"
 * measureOf("meq/L"); // => "hardness"
 * ```
 */
export function measureOf(unit: Unit): Measure {
  const measure = measureIfKnown(unit);
  if (measure) return measure;
  throw refusal("unit", unitsFor(undefined), unit, "word");
}
