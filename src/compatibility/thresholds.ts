import { frozen } from "../frozen";
import { numbers, type ThresholdName } from "./threshold-values";

/** A number a rule decides by. */
export interface Threshold {
  readonly value: number;
  readonly unit: string;
  /** What it decides. */
  readonly about: string;
  /** Where it is from. */
  readonly source: string;
}

const commonPractice = "common practice, no source";

/** A call that bundlers leave out where nobody reads the reasons. */
const table = () =>
  ({
    givesTemperature: {
      value: numbers.givesTemperature,
      unit: "K",
      about: "How far each end of a kept temperature gives way.",
      source: `${commonPractice}: handbook figures are rounded to whole degrees, and this is half of one`,
    },
    givesHotDay: {
      value: numbers.givesHotDay,
      unit: "K",
      about: "How far the upper end of a kept temperature gives way on hot days.",
      source: `${commonPractice}; Brungs & Jones 1977, EPA-600/3-77-061, from memory: a third of the way from the best temperature to the deadly one for a week`,
    },
    givesCoolSeason: {
      value: numbers.givesCoolSeason,
      unit: "K",
      about: "How far the lower end of a kept temperature gives way in a cool season.",
      source: `${commonPractice}: a heater holds its setting within a degree`,
    },
    leastTemperature: {
      value: numbers.leastTemperature,
      unit: "K",
      about: "The least width of a temperature range that counts as one at all.",
      source: `${commonPractice}: half of the whole degrees that thermostats are set in`,
    },
    steadyTemperature: {
      value: numbers.steadyTemperature,
      unit: "K",
      about:
        "Two kinds whose kept temperatures share less than this meet at the end of both, and of neither's best.",
      source: `${commonPractice}: a thermostat switches half a degree to either side of what it is set to`,
    },
    endOfSeasons: {
      value: numbers.endOfSeasons,
      unit: "1",
      about:
        "Two kinds whose kept temperatures share no more than this part of the span of one meet at its end; of a span so wide that it holds summer and winter, a season is no water for good.",
      source: `${commonPractice}: pond fish in a heated tank live in an endless high summer`,
    },
    sharedTemperature: {
      value: numbers.sharedTemperature,
      unit: "K",
      about: "The least width of a shared kept temperature range that counts as room to spare.",
      source: `${commonPractice}: the daily swing of a heater and a room`,
    },
    givesPH: {
      value: numbers.givesPH,
      unit: "",
      about: "How far each end of a kept pH range gives way.",
      source: `${commonPractice}: handbook figures are rounded to halves`,
    },
    leastPH: {
      value: numbers.leastPH,
      unit: "",
      about: "The least width of a pH range that can be held.",
      source: `${commonPractice}: pH moves by more than that from morning to evening in a planted tank`,
    },
    sharedPH: {
      value: numbers.sharedPH,
      unit: "",
      about: "The least width of a shared kept pH range that counts as room to spare.",
      source: `${commonPractice}: the reading error of a drop test`,
    },
    givesHardness: {
      value: numbers.givesHardness,
      unit: "dH",
      about: "How far each end of a kept hardness range gives way.",
      source: `${commonPractice}: handbook figures are classes of several degrees`,
    },
    leastHardness: {
      value: numbers.leastHardness,
      unit: "dH",
      about: "The least width of a hardness range that can be held.",
      source: `${commonPractice}: a drop test counts whole degrees`,
    },
    sharedHardness: {
      value: numbers.sharedHardness,
      unit: "dH",
      about: "The least width of a shared kept hardness range that counts as room to spare.",
      source: `${commonPractice}: a drop test counts whole degrees`,
    },
    likelyPrey: {
      value: numbers.likelyPrey,
      unit: "1",
      about: "Prey up to this share of the hunter's total length is likely eaten.",
      source:
        "Gaeta et al. 2018, PLoS ONE 13:e0194092: medians of seven freshwater fish-eaters lie from 0.10 to 0.20",
    },
    possiblePrey: {
      value: numbers.possiblePrey,
      unit: "1",
      about: "Prey up to this share of the hunter's total length may be eaten.",
      source:
        "Gaeta et al. 2018, PLoS ONE 13:e0194092: the greatest 99th percentile of seven freshwater fish-eaters",
    },
    preyDepth: {
      value: numbers.preyDepth,
      unit: "1",
      about: "Prey deeper than this share of the hunter's standard length does not go down.",
      source: "Mihalitsis & Bellwood 2017, PLoS ONE 12:e0184679: the greater of two predators measured",
    },
    bandAboveStated: {
      value: numbers.bandAboveStated,
      unit: "1",
      about: "Up to this many times a stated greatest prey length a hunter may still try.",
      source: `${commonPractice}: a stated greatest prey is what somebody saw, not what the jaw allows`,
    },
    youngFish: {
      value: numbers.youngFish,
      unit: "cm",
      about: "Fish up to this length count as fry where no length of prey is stated.",
      source: commonPractice,
    },
    youngCrustacean: {
      value: numbers.youngCrustacean,
      unit: "cm",
      about: "Shrimps, crayfish and crabs up to this length count as newly hatched likewise.",
      source: commonPractice,
    },
    youngSnail: {
      value: numbers.youngSnail,
      unit: "cm",
      about: "Snails up to this size count as newly hatched likewise.",
      source: commonPractice,
    },
    clawReach: {
      value: numbers.clawReach,
      unit: "1",
      about: "Crayfish and crabs seize what rests beside them up to this share of their own length.",
      source: commonPractice,
    },
    muchSmaller: {
      value: numbers.muchSmaller,
      unit: "1",
      about:
        "Below this share of its length another cannot hold its own against a fin nipper, nor drive or frighten it.",
      source: commonPractice,
    },
    farTooSmall: {
      value: numbers.farTooSmall,
      unit: "1",
      about: "Below this share of the least run or floor no furnishing helps.",
      source: `${commonPractice}: published answers refuse tanks at 0.07 to 0.22 of it and accept 0.49 and more`,
    },
    nearlyLong: {
      value: numbers.nearlyLong,
      unit: "1",
      about: "From this share of the least run on, a tank that is shorter is worth knowing and no more.",
      source: `${commonPractice}: figures are told in the lengths that tanks are sold in, a fifth apart, and this is half of it`,
    },
    nearlyWide: {
      value: numbers.nearlyWide,
      unit: "1",
      about: "From this share of a least floor on, a floor that is smaller is worth knowing and no more.",
      source: `${commonPractice}: the floors of tanks that are sold are a third apart, and this is half of it`,
    },
    coverInsteadOfCompany: {
      value: numbers.coverInsteadOfCompany,
      unit: "1",
      about:
        "The cover, as a multiple of what it needs, in which a shy animal settles by itself, more slowly.",
      source: commonPractice,
    },
    coverForYoung: {
      value: numbers.coverForYoung,
      unit: "1",
      about: "The share of dense cover in which some of the young survive.",
      source: `${commonPractice}; that cover lowers the number eaten is shown for guppies and a pike cichlid`,
    },
    coverAgainstChase: {
      value: numbers.coverAgainstChase,
      unit: "1",
      about: "The share of cover in which a chased animal gets out of sight.",
      source: `${commonPractice}; no source gives a share`,
    },
    coverFromBustle: {
      value: numbers.coverFromBustle,
      unit: "1",
      about: "The share of cover in which a shy animal stays at ease beside restless company.",
      source: `${commonPractice}; plants lowered fighting in zebrafish, Basquill & Grant 1998`,
    },
    roomBesideBrood: {
      value: numbers.roomBesideBrood,
      unit: "1",
      about: "The floor, as a multiple of the parents' territory, on which company stays out of their reach.",
      source: `${commonPractice}: half of the tank for the pair`,
    },
    groundBesideBrood: {
      value: numbers.groundBesideBrood,
      unit: "1",
      about: "The same for company that lives on the ground alone, beside parents that bite.",
      source: `${commonPractice}: a third of the ground for the pair`,
    },
    spreadsFrom: {
      value: numbers.spreadsFrom,
      unit: "",
      about: "The least group of a kind in which rivals that only chase each other spread it.",
      source: `${commonPractice}; less aggression in groups of ten than in pairs, Saxby et al. 2010`,
    },
    clearlySmaller: {
      value: numbers.clearlySmaller,
      unit: "1",
      about: "Below this share of an animal's length another is clearly smaller and gives way.",
      source:
        "Wazlavek & Figler, Aggressive Behavior, abstract: a lead of 20 to 30 % in length decides contests of convict cichlids",
    },
    muchLonger: {
      value: numbers.muchLonger,
      unit: "1",
      about: "From this many times its length on, fast company pushes a fish aside.",
      source: commonPractice,
    },
    oxygenForLow: {
      value: numbers.oxygenForLow,
      unit: "mg/L",
      about: "The oxygen down to which an animal of low need may come for a night.",
      source: "EPA 440/5-86-003, from memory: one-day minimum for grown warm-water fish",
    },
    oxygenForOrdinary: {
      value: numbers.oxygenForOrdinary,
      unit: "mg/L",
      about: "The oxygen down to which an animal of ordinary need may come for a night.",
      source: "Directive 78/659/EEC, Annex I (repealed): guide value for cyprinid waters, all values",
    },
    oxygenForHigh: {
      value: numbers.oxygenForHigh,
      unit: "mg/L",
      about: "The oxygen down to which an animal of high need may come for a night.",
      source: "Model Conditions for Pet Vending Licensing 2013, from memory: least dissolved oxygen in shops",
    },
    nightHours: {
      value: numbers.nightHours,
      unit: "h",
      about: "How long the oxygen must last without any exchange at the surface.",
      source: `${commonPractice}: a tropical night, and a power cut`,
    },
    carbonDioxide: {
      value: numbers.carbonDioxide,
      unit: "mg/L",
      about: "The carbon dioxide up to which nothing is said of it.",
      source: `${commonPractice}: the most that is given to planted tanks; bass swim as fast in up to 40 mg/L (Dahlberg 1963, thesis, Oregon State University, abstract), young trout die in a day from 150 mg/L on, carp from 225 (Treanor et al. 2020, doi:10.3996/jfwm-20-012, abstract)`,
    },
    openSurface: {
      value: numbers.openSurface,
      unit: "1",
      about:
        "The share of the surface at which air breathers find air at once, and at which leaves do not close it to others.",
      source: `${commonPractice}: no plant should cover a pond entirely (Beem, Oklahoma State University Cooperative Extension, 31 July 2014), and a fifth leaves something to spare`,
    },
    broadFlank: {
      value: numbers.broadFlank,
      unit: "cm",
      about: "The length from which any fish has flanks broad enough to be rasped.",
      source: commonPractice,
    },
    nearlyBroad: {
      value: numbers.nearlyBroad,
      unit: "1",
      about: "The share of that length from which nobody can tell whether they are.",
      source: commonPractice,
    },
    besideOthers: {
      value: numbers.besideOthers,
      unit: "1",
      about:
        "The share of its own least floor that a group adds beside another that lives on the same ground.",
      source: commonPractice,
    },
    besideSwimmers: {
      value: numbers.besideSwimmers,
      unit: "1",
      about:
        "The share of its own least floor that a group adds beside another that swims in the open water.",
      source: `${commonPractice}: the floors of tanks that are sold are a third to a half apart, and one size more takes two or three shoals more`,
    },
    tallBody: {
      value: numbers.tallBody,
      unit: "cm",
      about: "The length from which a deep-bodied fish needs more height than tanks commonly have.",
      source: commonPractice,
    },
    waterDepth: {
      value: numbers.waterDepth,
      unit: "1",
      about: "The least depth of the water, in standard lengths of a fish.",
      source: "Tierschutzverordnung (Switzerland, SR 455.1), Annex 2 Table 8, note b",
    },
    bendingRoom: {
      value: numbers.bendingRoom,
      unit: "1",
      about:
        "The least width and depth of the water, in lengths of a fish as supple as an eel; of what is no fish, the least depth.",
      source: commonPractice,
    },
    restsOnHeaters: {
      value: numbers.restsOnHeaters,
      unit: "cm",
      about: "The length from which an animal that rests on the ground also rests on a heater.",
      source: commonPractice,
    },
    floorLoad: {
      value: numbers.floorLoad,
      unit: "kN/m2",
      about: "The load of a filled tank on its footprint from which the caution on floors is given.",
      source: "NHBC Standards 2022, 6.4.8: imposed load behind the span tables for domestic floor joists",
    },
    floorForce: {
      value: numbers.floorForce,
      unit: "kN",
      about: "The weight of tank, water, gravel and stand from which the caution on floors is given.",
      source:
        "EN 1991-1-1:2002, table 6.2, from memory: concentrated load on floors of dwellings, 2.0 to 3.0 kN",
    },
    floorUnknownHeight: {
      value: numbers.floorUnknownHeight,
      unit: "cm2",
      about: "The floor of a tank from which the caution is given where nobody says how high it is.",
      source: `${commonPractice}: 300 L at 60 cm`,
    },
  }) as const satisfies Record<ThresholdName, Threshold>;

/**
 * Every number that rules decide by. Callers replace any of them with the `thresholds` option, which refuses what would
 * mean nothing.
 */
export const thresholds = /* @__PURE__ */ frozen(/* @__PURE__ */ table());
