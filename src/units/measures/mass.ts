import { multiples } from "../multiples";

/** Milligram, gram, kilogram, avoirdupois ounce, avoirdupois pound. */
export type MassUnit = "mg" | "g" | "kg" | "oz" | "lb";

const pound = 453_592_370_000; // 1 lb = 0.453 592 37 kg

/** Nanograms in each unit. Pound: international yard and pound agreement of 1959, as encyclopedias tell it. */
export const mass = () =>
  multiples<MassUnit>({
    mg: 1e6,
    g: 1e9,
    kg: 1e12,
    oz: pound / 16, // 28.349 523 125 g
    lb: pound,
  });
