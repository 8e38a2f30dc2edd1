import { multiples } from "../multiples";

/** Second, minute, hour, day, Julian year of 365.25 days, and its twelfth, the mean month. */
export type TimeUnit = "s" | "min" | "h" | "d" | "mo" | "a";

const day = 86_400;

/** Seconds in each unit. */
export const time = () =>
  multiples<TimeUnit>({
    s: 1,
    min: 60,
    h: 3_600,
    d: day,
    mo: (365.25 / 12) * day, // the mean Julian month of UCUM, mo_j
    a: 365.25 * day, // Julian year, the year of the International Astronomical Union (IAU Style Manual 1989, 5.15, as encyclopedias cite it)
  });
