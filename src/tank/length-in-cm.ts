import { refusal } from "../errors";
import type { LengthUnit } from "../units";
import { coordinate, lengthDomain } from "./lengths";

/**
 * The size of a tank or of a part of it, checked and in cm. So {@link tankGeometry} takes every length it is given.
 *
 * @param value The length, in `unit`, from 0.1 mm to 1 km.
 * @param unit The unit of `value`. Default `cm`.
 * @param subject The path that an error names: `groups[1].length`. Default `length`.
 * @throws InvalidInputError if the value is no finite number or beyond 0.1 mm to 1 km, or the unit is none of length.
 *
 * @example
 * ```ts
 * import { lengthInCm } from "vivary/tank";
 *
 * lengthInCm(24, "in"); // => 60.96
 * lengthInCm(0); // throws
 * ```
 */
export function lengthInCm(value: number, unit: LengthUnit = "cm", subject: string = "length"): number {
  if (typeof subject !== "string") throw refusal("subject", "a text", subject);
  const cm = coordinate(value, unit, subject);
  if (cm >= lengthDomain.min) return cm;
  throw refusal(subject, "a length of at least 0.1 mm", value, "range");
}
