import { finite, positive, refusal } from "../errors";
import { convert, type LengthUnit } from "../units";

const leastSize = 0.01; // cm
const greatest = 100_000; // cm

/** The size of a tank or of a part of it, in cm: above zero, between a tenth of a millimetre and a kilometre. */
export function size(value: unknown, subject: string, unit: LengthUnit): number {
  const cm = convert(positive(value, subject), unit, "cm");
  if (cm >= leastSize && cm <= greatest) return cm;
  throw refusal(subject, "a length between 0.1 mm and 1 km", value);
}

/** A length in cm that may be zero. */
export function distance(value: unknown, subject: string, unit: LengthUnit): number {
  const cm = coordinate(value, subject, unit);
  if (cm >= 0) return cm;
  throw refusal(subject, "a length of zero or more", value);
}

/** A place along an axis, in cm, at most a kilometre from the origin. */
export function coordinate(value: unknown, subject: string, unit: LengthUnit): number {
  const cm = convert(finite(value, subject), unit, "cm");
  if (Math.abs(cm) <= greatest) return cm;
  throw refusal(subject, "a length of at most 1 km", value);
}
