import { finite, objectOf, refusal } from "../errors";
import { frozen } from "../frozen";

/** Every number that rules decide by. What each decides, its unit and its source stand in thresholds.ts. */
export const numbers = /* @__PURE__ */ frozen({
  givesTemperature: 0.5, // K
  givesHotDay: 2, // K
  givesCoolSeason: 1, // K
  leastTemperature: 0.5, // K
  steadyTemperature: 1, // K
  endOfSeasons: 0.1,
  sharedTemperature: 2, // K
  givesPH: 0.25,
  leastPH: 0.2,
  sharedPH: 0.5,
  givesHardness: 2, // dH
  leastHardness: 1, // dH
  sharedHardness: 2, // dH
  likelyPrey: 0.2,
  possiblePrey: 0.46,
  preyDepth: 0.27,
  bandAboveStated: 1.25,
  youngFish: 1.5, // cm
  youngCrustacean: 1, // cm
  youngSnail: 0.5, // cm
  clawReach: 0.5,
  muchSmaller: 0.5,
  farTooSmall: 0.45,
  nearlyLong: 0.9,
  nearlyWide: 0.85,
  coverInsteadOfCompany: 1.5,
  coverForYoung: 0.3,
  coverAgainstChase: 0.3,
  coverFromBustle: 0.3,
  roomBesideBrood: 2,
  groundBesideBrood: 3,
  spreadsFrom: 4,
  clearlySmaller: 0.8,
  muchLonger: 4,
  oxygenForLow: 3, // mg/L
  oxygenForOrdinary: 5, // mg/L
  oxygenForHigh: 6, // mg/L
  nightHours: 12, // h
  carbonDioxide: 30, // mg/L
  openSurface: 0.2,
  broadFlank: 10, // cm
  nearlyBroad: 0.75,
  besideOthers: 0.5,
  besideSwimmers: 0.2,
  tallBody: 10, // cm
  waterDepth: 1,
  restsOnHeaters: 20, // cm
  floorLoad: 1.5, // kN/m2
  floorForce: 3, // kN
  floorUnknownHeight: 5000, // cm2
} as const);

/** The name of a threshold. */
export type ThresholdName = keyof typeof numbers;

/** The numbers that rules decide by, by name. */
export type ThresholdValues = Readonly<Record<ThresholdName, number>>;

/**
 * The numbers to decide by: those of the table, with the changed ones in their place.
 *
 * @throws InvalidInputError for a name the table does not have, or a value that is no finite number.
 */
export function thresholdValues(changed?: Partial<ThresholdValues>): ThresholdValues {
  if (changed === undefined) return numbers;
  for (const [name, value] of Object.entries(objectOf(changed, "options.thresholds"))) {
    const names = Object.keys(numbers);
    if (!names.includes(name))
      throw refusal(`options.thresholds.${name}`, `one of ${names.join(", ")}`, name, "unknown-key");
    finite(value, `options.thresholds.${name}`);
  }
  return Object.freeze({ ...numbers, ...changed });
}
