import { multiples } from "../multiples";

/** Centimetre, metre and international foot per second. */
export type SpeedUnit = "cm/s" | "m/s" | "ft/s";

/** Micrometres per second in each unit. */
export const speed = () =>
  multiples<SpeedUnit>({
    "cm/s": 10_000,
    "m/s": 1_000_000,
    "ft/s": 304_800, // 1 ft = 0.3048 m
  });
