import { inDomain, objectOf, refuseOthers } from "../checks";
import { frozen } from "../frozen";
import { kelvins } from "../units/inner";

/** What the share of un-ionized ammonia depends on. */
export interface AmmoniaConditions {
  /** °C. */
  readonly temperature: number;
  /** pH as a glass electrode reads it. */
  readonly pH: number;
}

/** Where {@link unionizedAmmoniaFraction} holds: the temperatures of Emerson et al., the whole pH scale. */
export const ammoniaDomain = /* @__PURE__ */ frozen({
  /** °C. */
  temperature: { min: 0, max: 50 },
  /** pH. */
  pH: { min: 0, max: 14 },
} as const);

/**
 * The share of total ammonia that is un-ionized (NH3, the toxic form), from 0 to 1, in fresh water.
 *
 * A pure share of molecules: times total ammonia nitrogen it gives NH3 as nitrogen, which times 1.2159 is mg of
 * NH3. Salt lowers the share a little, so for brackish water the result is on the safe side.
 *
 * Source: Emerson, Russo, Lund & Thurston 1975, J. Fish. Res. Board Can. 32:2379-2383.
 *
 * @throws OutsideDomainError outside {@link ammoniaDomain}.
 * @throws InvalidInputError if a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { unionizedAmmoniaFraction } from "vivary/water";
 *
 * unionizedAmmoniaFraction({ temperature: 25, pH: 7 }); // ≈ 0.00564
 * unionizedAmmoniaFraction({ temperature: 25, pH: 8 }); // ≈ 0.0537
 * ```
 */
export function unionizedAmmoniaFraction(conditions: AmmoniaConditions): number {
  const { temperature, pH, ...others } = objectOf(conditions, "");
  refuseOthers(others, "");
  const t = inDomain(temperature, "temperature", ammoniaDomain.temperature, "degC");
  const acidity = inDomain(pH, "pH", ammoniaDomain.pH);
  const pKa = 0.09018 + 2729.92 / kelvins(t);
  return 1 / (1 + 10 ** (pKa - acidity));
}
