import { multiples } from "../multiples";

/**
 * Millilitre, litre, cubic metre, cubic inch, cubic foot, US liquid quart, US liquid gallon, imperial gallon
 * (the gallon of the United Kingdom and Canada).
 */
export type VolumeUnit = "mL" | "L" | "m3" | "in3" | "ft3" | "qt-us" | "gal-us" | "gal-imp";

const cubicInch = 16_387_064; // (25.4 mm)³ = 16 387.064 mm³, and 1 mm³ = 1000 nL

/**
 * Nanolitres in each unit. US gallon: NIST Handbook 44, appendix C, units of capacity. Imperial gallon: Weights and Measures
 * Act 1985 (UK), schedule 1, part IV, as first enacted.
 */
export const volume = () =>
  multiples<VolumeUnit>({
    mL: 1e6,
    L: 1e9,
    m3: 1e12,
    in3: cubicInch,
    ft3: 1_728 * cubicInch, // 12³ in³
    "qt-us": 57.75 * cubicInch, // a quarter of a US gallon
    "gal-us": 231 * cubicInch, // 1 US gallon = 231 in³
    "gal-imp": 4_546_090_000, // 1 imperial gallon = 4.546 09 L
  });
