import { refusal } from "../errors";
import type { LengthUnit } from "../units";
import { coordinate, lengthDomain } from "./lengths";

/**
 * The size of a tank or of a part of it, checked and in cm. So {@link tankGeometry} takes every length it is given.
 *
 * @param value The length, in `unit`, from 0.1 mm to 1 km.
 * @param subject What the length is of, for the path of the error: `height`.
 * @param unit The unit of `value`. Default `cm`.
 * @throws InvalidInputError if the value is no finite number or beyond 0.1 mm to 1 km, or the unit is none of length.
 *
 * @example
 * ```ts
 * import { lengthInCm } from "vivary/tank";
 *
 * lengthInCm(24, "height", "in"); // => 60.96
 * lengthInCm(0, "height"); // throws
 * ```
 */
export function lengthInCm(value: unknown, subject: string, unit?: LengthUnit | undefined): number {
  const cm = coordinate(value, subject, unit);
  if (cm >= lengthDomain.min) return cm;
  throw refusal(subject, "a length of at least 0.1 mm", value, "range");
}
