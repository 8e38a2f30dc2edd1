import { inDomain, objectOf, refuseOthers } from "../checks";
import { frozen } from "../frozen";
import { kelvins } from "../units/inner";

/** What the solubility of oxygen depends on. */
export interface OxygenConditions {
  /** °C. */
  readonly temperature: number;
  /** g/kg, taken as practical salinity (the two differ by half a percent). Default 0. */
  readonly salinity?: number | undefined;
  /** Total pressure of the moist air above the water, kPa. Default 101.325, one atmosphere. */
  readonly pressure?: number | undefined;
}

/** One atmosphere in kPa, exact by definition. */
const atmosphere = 101.325;

/** Where {@link oxygenSaturation} holds: the ranges Benson & Krause state, pressure from 0.5 to 1.1 atm. */
export const oxygenDomain = /* @__PURE__ */ frozen({
  /** °C. */
  temperature: { min: 0, max: 40 },
  /** g/kg. */
  salinity: { min: 0, max: 40 },
  /** kPa. */
  pressure: { min: 50.6625, max: 111.4575 },
} as const);

/**
 * Oxygen dissolved in water that is in balance with moist air (100 % saturation), in mg/L.
 *
 * Source: Benson & Krause 1984, Limnol. Oceanogr. 29:620-632, the equation per volume and the pressure term
 * (eq. 24); water vapour by the equation that Standard Methods 4500-O gives with them. The basis of the USGS
 * tables since 2011.
 *
 * @throws OutsideDomainError outside {@link oxygenDomain}.
 * @throws InvalidInputError if a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { oxygenSaturation } from "vivary/water";
 *
 * oxygenSaturation({ temperature: 25 }); // ≈ 8.26
 * oxygenSaturation({ temperature: 25, salinity: 10 }); // ≈ 7.81
 * oxygenSaturation({ temperature: 25, pressure: 85 }); // ≈ 6.89
 * oxygenSaturation({ temperature: 50 }); // throws
 * ```
 */
export function oxygenSaturation(conditions: OxygenConditions): number {
  const { temperature, salinity = 0, pressure = atmosphere, ...others } = objectOf(conditions, "");
  refuseOthers(others, "");
  const t = inDomain(temperature, "temperature", oxygenDomain.temperature, "degC");
  const s = inDomain(salinity, "salinity", oxygenDomain.salinity, "g/kg");
  const p = inDomain(pressure, "pressure", oxygenDomain.pressure, "kPa") / atmosphere;
  return atOneAtmosphere(t, s) * pressureFactor(t, p);
}

function atOneAtmosphere(t: number, s: number): number {
  const T = kelvins(t);
  const fresh = -139.34411 + 1.575701e5 / T - 6.642308e7 / T ** 2 + 1.2438e10 / T ** 3 - 8.621949e11 / T ** 4;
  const salt = 0.017674 - 10.754 / T + 2140.7 / T ** 2;
  return Math.exp(fresh - s * salt);
}

/** By what the solubility changes from one atmosphere to `p` atmospheres. */
function pressureFactor(t: number, p: number): number {
  const T = kelvins(t);
  const vapour = Math.exp(11.8571 - 3840.7 / T - 216961 / T ** 2);
  const theta = 0.000975 - 1.426e-5 * t + 6.436e-8 * t ** 2;
  return ((p - vapour) * (1 - theta * p)) / ((1 - vapour) * (1 - theta));
}
