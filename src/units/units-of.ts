import { oneOf } from "../checks";
import { amounts } from "./converter";
import { definitions } from "./definitions";
import type { Measure, UnitsByMeasure } from "./unit";

/**
 * The ids of all units of a measure, such as a form offers them. Each converts into every other.
 *
 * @param measure What they measure.
 * @returns A new list, in an order that is the same at every call.
 * @throws InvalidInputError if the measure is unknown.
 *
 * @example
 * ```ts
 * import { unitsOf } from "vivary/units";
 *
 * unitsOf("length"); // => ["mm", "cm", "m", "in", "ft"]
 * unitsOf("salinity"); // => ["g/kg"]
 * ```
 */
export function unitsOf<M extends Measure>(measure: M): UnitsByMeasure[M][] {
  oneOf(measure, Object.keys(definitions), "measure");
  return amounts().possibilities(measure) as UnitsByMeasure[M][];
}
