import { multiples } from "../multiples";

/** Second, minute, hour, day, and Julian year of 365.25 days. */
export type TimeUnit = "s" | "min" | "h" | "d" | "a";

const day = 86_400;

/** Seconds in each unit. */
export const time = /* @__PURE__ */ multiples<TimeUnit>({
  s: 1,
  min: 60,
  h: 3_600,
  d: day,
  a: 365.25 * day, // Julian year, the year of the International Astronomical Union (IAU Style Manual 1989, 5.15, as encyclopedias cite it)
});
