import { multiples } from "../multiples";

/** Kilopascal, hectopascal, standard atmosphere, conventional millimetre of mercury. */
export type PressureUnit = "kPa" | "hPa" | "atm" | "mmHg";

/** Nanopascals in each unit. */
export const pressure = () =>
  multiples<PressureUnit>({
    kPa: 1e12,
    hPa: 1e11,
    atm: 101_325e9, // 101 325 Pa: 10th General Conference on Weights and Measures, 1954, resolution 4
    mmHg: 133_322_387_415, // 1 mm × 13 595.1 kg/m³ × 9.806 65 m/s² = 133.322 387 415 Pa
  });
