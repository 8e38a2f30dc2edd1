import { finite, oneOf } from "../checks";
import { refusal } from "../errors";
import type { LengthUnit } from "../units";
import { micrometres } from "../units/inner";

/** What counts as a length of a tank: a tenth of a millimetre to a kilometre, in cm. */
export const lengthDomain = { min: 0.01, max: 100_000 } as const;

/** A length that may be zero, in cm. */
export function distance(value: number, unit: LengthUnit, subject: string): number {
  const cm = coordinate(value, unit, subject);
  if (cm >= 0) return cm;
  throw refusal(subject, "a length of zero or more", value, "range");
}

/** A place along an axis, in cm, at most a kilometre from the origin. */
export function coordinate(value: number, unit: LengthUnit, subject: string): number {
  const length = finite(value, subject);
  oneOf(unit, Object.keys(micrometres), "unit");
  const cm = unit === "cm" ? length : (length * micrometres[unit]) / micrometres.cm;
  if (Math.abs(cm) <= lengthDomain.max) return cm;
  throw refusal(subject, "a length of at most 1 km", value, "range");
}
