import { notNegative, objectOf } from "../checks";
import { refusal } from "../errors";
import { frozen } from "../frozen";

/** Shares of something else: from 0 to 1. */
const shares = {
  endOfSeasons: 0.1,
  likelyPrey: 0.2,
  possiblePrey: 0.46,
  preyDepth: 0.27,
  clawReach: 0.5,
  muchSmaller: 0.5,
  farTooSmall: 0.45,
  nearlyLong: 0.9,
  nearlyWide: 0.85,
  coverForYoung: 0.3,
  coverAgainstChase: 0.3,
  coverFromBustle: 0.3,
  clearlySmaller: 0.8,
  openSurface: 0.2,
  nearlyBroad: 0.75,
  bendingRoom: 0.3,
  besideOthers: 0.5,
  besideSwimmers: 0.2,
} as const;

/** Amounts, with their units, and multiples of something else: from 0 on. */
const amounts = {
  givesTemperature: 0.5, // K
  givesHotDay: 2, // K
  givesCoolSeason: 1, // K
  leastTemperature: 0.5, // K
  steadyTemperature: 1, // K
  sharedTemperature: 2, // K
  givesPH: 0.25,
  leastPH: 0.2,
  sharedPH: 0.5,
  givesHardness: 2, // dH
  leastHardness: 1, // dH
  sharedHardness: 2, // dH
  bandAboveStated: 1.25,
  youngFish: 1.5, // cm
  youngCrustacean: 1, // cm
  youngSnail: 0.5, // cm
  coverInsteadOfCompany: 1.5,
  roomBesideBrood: 2,
  groundBesideBrood: 3,
  spreadsFrom: 4,
  muchLonger: 4,
  oxygenForLow: 3, // mg/L
  oxygenForOrdinary: 5, // mg/L
  oxygenForHigh: 6, // mg/L
  nightHours: 12, // h
  carbonDioxide: 30, // mg/L
  broadFlank: 10, // cm
  tallBody: 10, // cm
  waterDepth: 1,
  restsOnHeaters: 20, // cm
  floorLoad: 1.5, // kN/m2
  floorForce: 3, // kN
  floorUnknownHeight: 5000, // cm2
} as const;

/** Every number that rules decide by. What each decides, its unit and its source stand in thresholds.ts. */
export const numbers = /* @__PURE__ */ frozen(/* @__PURE__ */ Object.assign({}, shares, amounts));

/** Of which numbers the first is no more than the second, since it is the stricter one of two about the same thing. */
const inOrder: readonly (readonly [ThresholdName, ThresholdName])[] = [
  ["likelyPrey", "possiblePrey"],
  ["muchSmaller", "clearlySmaller"],
  ["farTooSmall", "nearlyLong"],
  ["farTooSmall", "nearlyWide"],
  ["oxygenForLow", "oxygenForOrdinary"],
  ["oxygenForOrdinary", "oxygenForHigh"],
];

/** The name of a threshold. */
export type ThresholdName = keyof typeof numbers;

/** The numbers that rules decide by, by name. */
export type ThresholdValues = Readonly<Record<ThresholdName, number>>;

/**
 * The numbers to decide by: those of the table, with the changed ones in their place.
 *
 * @throws InvalidInputError for a name the table does not have, a value outside its span, and two that are not in order.
 */
export function thresholdValues(changed?: Partial<ThresholdValues>): ThresholdValues {
  if (changed === undefined) return numbers;
  for (const [name, value] of Object.entries(objectOf(changed, "options.thresholds"))) {
    const at = `options.thresholds.${name}`;
    if (!Object.hasOwn(numbers, name))
      throw refusal(at, `one of ${Object.keys(numbers).join(", ")}`, name, "unknown-key");
    if (notNegative(value, at) > 1 && name in shares)
      throw refusal(at, "a share from 0 to 1", value, "range");
  }
  const values = { ...numbers, ...changed };
  for (const [less, more] of inOrder)
    if (values[less] > values[more])
      throw refusal(
        `options.thresholds.${less}`,
        `at most ${more}, ${values[more]}`,
        values[less],
        "conflict",
      );
  return Object.freeze(values);
}
