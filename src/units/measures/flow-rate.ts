import { multiples } from "../multiples";

/** Litre per hour, litre per minute, US gallon per hour. */
export type FlowRateUnit = "L/h" | "L/min" | "gal-us/h";

/** Nanolitres per hour in each unit. */
export const flowRate = () =>
  multiples<FlowRateUnit>({
    "L/h": 1e9,
    "L/min": 60e9, // 60 min to the hour
    "gal-us/h": 3_785_411_784, // 1 US gallon = 231 in³ = 3.785 411 784 L
  });
