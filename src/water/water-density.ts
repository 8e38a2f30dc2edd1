import { inDomain, objectOf, refuseOthers } from "../checks";
import { frozen } from "../frozen";

/** What the density of water depends on. */
export interface DensityConditions {
  /** °C. */
  readonly temperature: number;
  /** g/kg, taken as practical salinity (the two differ by half a percent). Default 0. */
  readonly salinity?: number | undefined;
}

/** Where {@link waterDensity} holds: liquid water within the ranges of the equation of state. */
export const densityDomain = /* @__PURE__ */ frozen({
  /** °C. */
  temperature: { min: 0, max: 40 },
  /** g/kg. */
  salinity: { min: 0, max: 42 },
} as const);

/**
 * Density of fresh, brackish or sea water at one atmosphere, in kg/L. Good to about 0.000005 kg/L.
 *
 * Source: the one-atmosphere International Equation of State of Seawater (EOS-80), Millero & Poisson 1981,
 * Deep-Sea Res. 28A:625-629; UNESCO Technical Papers in Marine Science 44 (1983). The temperature is read as
 * ITS-90 and brought to the equation's IPTS-68 by the factor 1.00024 (Saunders 1990).
 *
 * @throws OutsideDomainError outside {@link densityDomain}.
 * @throws InvalidInputError if a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { waterDensity } from "vivary/water";
 *
 * waterDensity({ temperature: 25 }); // ≈ 0.997
 * waterDensity({ temperature: 25, salinity: 35 }); // ≈ 1.02
 * ```
 */
export function waterDensity(conditions: DensityConditions): number {
  const { temperature, salinity = 0, ...others } = objectOf(conditions, "");
  refuseOthers(others, "");
  const t = 1.00024 * inDomain(temperature, "temperature", densityDomain.temperature, "degC");
  const s = inDomain(salinity, "salinity", densityDomain.salinity, "g/kg");
  return (fresh(t) + linear(t) * s + root(t) * s ** 1.5 + 4.8314e-4 * s ** 2) / 1000;
}

/** Density of pure water, kg/m³. */
function fresh(t: number): number {
  return (
    999.842594 +
    6.793952e-2 * t -
    9.09529e-3 * t ** 2 +
    1.001685e-4 * t ** 3 -
    1.120083e-6 * t ** 4 +
    6.536332e-9 * t ** 5
  );
}

/** What salt adds, by its first power. */
function linear(t: number): number {
  return 8.24493e-1 - 4.0899e-3 * t + 7.6438e-5 * t ** 2 - 8.2467e-7 * t ** 3 + 5.3875e-9 * t ** 4;
}

/** What salt adds, by its power of one and a half. */
function root(t: number): number {
  return -5.72466e-3 + 1.0227e-4 * t - 1.6546e-6 * t ** 2;
}
