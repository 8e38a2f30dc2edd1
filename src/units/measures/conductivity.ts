import { multiples } from "../multiples";

/** Microsiemens and millisiemens per centimetre. */
export type ConductivityUnit = "uS/cm" | "mS/cm";

/** Microsiemens per centimetre in each unit. */
export const conductivity = () =>
  multiples<ConductivityUnit>({
    "uS/cm": 1,
    "mS/cm": 1_000,
  });
