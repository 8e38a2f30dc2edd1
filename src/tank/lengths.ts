import { finite, oneOf, refusal } from "../errors";
import { convert, type LengthUnit, unitsOf } from "../units";

/** What counts as a length of a tank: a tenth of a millimetre to a kilometre, in cm. */
export const lengthDomain = { min: 0.01, max: 100_000 } as const;

/** A length that may be zero, in cm. */
export function distance(value: unknown, unit: LengthUnit, subject: string): number {
  const cm = coordinate(value, unit, subject);
  if (cm >= 0) return cm;
  throw refusal(subject, "a length of zero or more", value, "range");
}

/** A place along an axis, in cm, at most a kilometre from the origin. */
export function coordinate(value: unknown, unit: LengthUnit, subject: string): number {
  const length = finite(value, subject);
  oneOf(unit, unitsOf("length"), "unit");
  if (Math.abs(length) <= convert(lengthDomain.max, "cm", unit)) return convert(length, unit, "cm");
  throw refusal(subject, "a length of at most 1 km", value, "range");
}
