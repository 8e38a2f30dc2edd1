import { inDomain, objectOf, refuseOthers } from "../checks";
import { frozen } from "../frozen";
import { kelvins, milliequivalentsPerDegree } from "../units/inner";

/** What dissolved carbon dioxide is computed from. */
export interface CarbonDioxideConditions {
  /** °C. */
  readonly temperature: number;
  /** pH as a glass electrode reads it. */
  readonly pH: number;
  /** Carbonate hardness (alkalinity), °dH. */
  readonly carbonateHardness: number;
  /** g/kg. Default 0. */
  readonly salinity?: number | undefined;
}

/**
 * Where {@link carbonDioxide} holds: the temperatures of Plummer & Busenberg; pH from the end point of the
 * titration that carbonate hardness is measured by; hardness and salinity of water that is still dilute. In brackish water
 * carbonic acid is stronger, and the result would be up to twice too high.
 */
export const carbonDioxideDomain = /* @__PURE__ */ frozen({
  /** °C. */
  temperature: { min: 0, max: 90 },
  /** pH. */
  pH: { min: 4.5, max: 10 },
  /** °dH. */
  carbonateHardness: { min: 0, max: 30 },
  /** g/kg. */
  salinity: { min: 0, max: 0.5 },
} as const);

/** Molar mass of CO2, g/mol. */
const molarMass = 44.0095;

/**
 * Carbon dioxide dissolved in fresh water, in mg/L, from pH and carbonate hardness.
 *
 * Alkalinity is taken to be carbonate only: phosphate, humic acids or borate count in its titration but hold no
 * carbon dioxide, so where they are present the result is too high. The constants are those at zero ionic
 * strength: at 0.005 mol/L (about 310 µS/cm) the true value is some 7 % lower, at 30 °dH some 11 %, with 0.5 g/kg of salt
 * beside them some 14 %, by the Davies equation. Zero where hydroxide alone accounts for the hardness given.
 *
 * Source: Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46:1011-1040, for carbonic acid; Nordstrom et al.
 * 1990 for water.
 *
 * @throws OutsideDomainError outside {@link carbonDioxideDomain}.
 * @throws InvalidInputError if a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { carbonDioxide } from "vivary/water";
 *
 * carbonDioxide({ temperature: 25, pH: 7, carbonateHardness: 4 }); // ≈ 14.1
 * carbonDioxide({ temperature: 25, pH: 7.5, carbonateHardness: 4 }); // ≈ 4.45
 * carbonDioxide({ temperature: 25, pH: 3, carbonateHardness: 4 }); // throws
 * carbonDioxide({ temperature: 25, pH: 8, carbonateHardness: 8, salinity: 10 }); // throws
 * ```
 */
export function carbonDioxide(conditions: CarbonDioxideConditions): number {
  const { temperature, pH, carbonateHardness, salinity = 0, ...others } = objectOf(conditions, "");
  refuseOthers(others, "");
  const t = inDomain(temperature, "temperature", carbonDioxideDomain.temperature, "degC");
  const acidity = inDomain(pH, "pH", carbonDioxideDomain.pH);
  const hardness = inDomain(
    carbonateHardness,
    "carbonateHardness",
    carbonDioxideDomain.carbonateHardness,
    "dH",
  );
  inDomain(salinity, "salinity", carbonDioxideDomain.salinity, "g/kg");

  const { K1, K2, Kw } = constants(kelvins(t));
  const hydrogen = 10 ** -acidity;
  const alkalinity = (milliequivalentsPerDegree * hardness) / 1000;
  const inCarbonates = alkalinity - Kw / hydrogen + hydrogen;
  const bicarbonate = Math.max(0, inCarbonates) / (1 + (2 * K2) / hydrogen);
  return ((bicarbonate * hydrogen) / K1) * molarMass * 1000;
}

/** First and second dissociation of carbonic acid, and of water, at `T` kelvin; mol/L. */
function constants(T: number) {
  const log = Math.log10(T);
  return {
    K1: 10 ** (-356.3094 - 0.06091964 * T + 21834.37 / T + 126.8339 * log - 1684915 / T ** 2),
    K2: 10 ** (-107.8871 - 0.03252849 * T + 5151.79 / T + 38.92561 * log - 563713.9 / T ** 2),
    Kw: 10 ** (-283.971 - 0.05069842 * T + 13323 / T + 102.24447 * log - 1119669 / T ** 2),
  };
}
