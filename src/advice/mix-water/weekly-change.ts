import { finite, notNegative, objectOf, positive, refuseOthers } from "../../checks";

/** Nitrate, as NO3, of which one gram of nitrogen makes so many: molar masses 62.0049 and 14.0067. */
const perNitrogen = 62.0049 / 14.0067;

/**
 * Nitrate, as NO3, up to which a tank is let come, mg/L: common practice, between what Camargo, Alonso & Salamanca 2005
 * (Chemosphere 58:1255-1267, abstract) advise for the most sensitive freshwater animals, 2 mg/L of nitrate nitrogen or 9
 * of NO3, and what harms some in long exposure, 10 or 44.
 */
export const nitrateLimit = 20;

/** What a weekly change is reckoned from. */
export interface WeeklyChangeInput {
  /** Ammonia nitrogen that the animals give off, mg a day: see `nitrogenLoad`. */
  readonly nitrogen: number;
  /** Water in the tank, L. */
  readonly volume: number;
  /** Nitrate of the water that is put in, as NO3, mg/L. Default 0. */
  readonly nitrate?: number | undefined;
  /** Nitrate that the tank may reach, as NO3, mg/L. Default {@link nitrateLimit}. */
  readonly limit?: number | undefined;
}

/** How much water is changed each week. */
export interface WeeklyChange {
  /** Of the tank's water, 0 to 1. */
  readonly share: number;
  /** L. */
  readonly litres: number;
}

/**
 * The share of the water to change once a week so that nitrate stays under a limit: what a week adds, over what the
 * limit leaves above the new water, once rise and change are in balance.
 *
 * All nitrogen that the animals give off is taken to become nitrate and to stay. Plants, and mud without oxygen, take
 * some of it up; waste and food left over add some. So a measured nitrate decides, not this figure.
 *
 * @returns Undefined where the new water itself holds as much as the tank may reach, or where more than the whole would
 * have to be changed: fewer animals, other water, or two changes a week.
 * @throws InvalidInputError if the volume or the limit is not above zero, or a number is below zero or not finite;
 * for any other field.
 *
 * @example
 * ```ts
 * import { weeklyChange } from "vivary/advice";
 *
 * weeklyChange({ nitrogen: 20, volume: 100, nitrate: 10 })?.share; // ≈ 0.62
 * ```
 */
export function weeklyChange(tank: WeeklyChangeInput): WeeklyChange | undefined {
  const { nitrogen, volume, nitrate = 0, limit = nitrateLimit, ...others } = objectOf(tank, "");
  refuseOthers(others, "");
  const rise = weeklyRise({ nitrogen, volume });
  const left = positive(limit, "limit") - notNegative(nitrate, "nitrate");
  if (left <= 0 || rise > left) return undefined;
  return { share: rise / left, litres: (rise / left) * volume };
}

/** By what nitrate, as NO3, rises in a week, mg/L; refused where that is more than can be reckoned. */
export const weeklyRise = ({ nitrogen, volume }: WeeklyChangeInput): number =>
  finite((7 * notNegative(nitrogen, "nitrogen") * perNitrogen) / positive(volume, "volume"), "nitrogen");
