import { multiples } from "../multiples";

/** Grams of salt in a kilogram of water and salt together. */
export type SalinityUnit = "g/kg";

/** A single unit: density, conductivity and g/L are read at a temperature, so no factor leads to them. */
export const salinity = () => multiples<SalinityUnit>({ "g/kg": 1 });
