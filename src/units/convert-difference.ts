import { convertBy, converterBy } from "./converter";
import { definitions } from "./definitions";
import { temperatureDifference } from "./measures/temperature";
import type { Unit, UnitLike } from "./unit";

const differences = /* @__PURE__ */ converterBy(() => ({
  ...definitions,
  temperature: temperatureDifference,
}));

/**
 * Converts a difference, such as a tolerance or the width of a range. The same as {@link convert} except for
 * temperatures, whose offsets vanish: a day's swing of 9 °F is a swing of 5 K.
 *
 * @param value The difference, in `from`. Any finite number.
 * @param from The unit it is given in.
 * @param to The unit to express it in.
 * @returns The difference, in `to`. Equal units return `value` itself.
 * @throws InvalidInputError if the value is not finite (or too large to express in `to`), a unit is unknown, or
 * the two belong to different measures.
 *
 * @example
 * ```ts
 * import { convertDifference } from "vivary/units";
 *
 * convertDifference(9, "degF", "K"); // => 5
 * convertDifference(2, "degC", "degF"); // => 3.6
 * convertDifference(1, "ft", "cm"); // => 30.48
 * ```
 */
export function convertDifference<From extends Unit>(value: number, from: From, to: UnitLike<From>): number {
  return convertBy(differences, value, from, to);
}
