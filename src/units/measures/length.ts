import { multiples } from "../multiples";

/** Millimetre, centimetre, metre, international inch, international foot. */
export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft";

/** Micrometres in each unit. Inch and foot: international yard and pound agreement of 1959, as encyclopedias tell it. */
export const micrometres: Readonly<Record<LengthUnit, number>> = {
  mm: 1_000,
  cm: 10_000,
  m: 1_000_000,
  in: 25_400, // 1 in = 25.4 mm
  ft: 12 * 25_400, // 1 ft = 12 in = 0.3048 m
};

/** Lengths by their micrometres. */
export const length = () => multiples<LengthUnit>(micrometres);
