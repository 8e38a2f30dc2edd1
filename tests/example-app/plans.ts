// Plans to try the app with. The tanks are invented; the species are real.
import { deflateRawSync } from "node:zlib";
import type { PlanData } from "vivary/plan";
import { parsePlan, speciesById } from "./shipped";

const tank = { base: { shape: "rectangle", length: 100, width: 40 }, height: 45 } as const;

/** Plans by what is told of them. */
export const plans = {
  "many things unsaid": {
    format: 1,
    tank: { base: { shape: "rectangle", length: 80, width: 35 } },
    groups: [{ species: "danio-rerio", unsexed: 4 }],
  },
  "two that fight": {
    format: 1,
    tank,
    water: { temperature: 26, pH: 7 },
    groups: [
      { species: "betta-splendens", males: 1 },
      { species: "apistogramma-cacatuoides", males: 1, females: 2 },
    ],
  },
  "one that eats the others, and much besides": {
    format: 1,
    tank: { base: { shape: "rectangle", length: 60, width: 30 }, height: 35, cover: 0.1 },
    water: { temperature: 29, pH: 7, generalHardness: 15 },
    groups: [
      { species: "pterophyllum-scalare", unsexed: 2 },
      { species: "paracheirodon-innesi", unsexed: 4 },
      { species: "poecilia-reticulata", males: 4, females: 2 },
    ],
  },
  "a round bowl": {
    format: 1,
    tank: { base: { shape: "circle", diameter: 30 }, height: 25 },
    groups: [{ species: "carassius-auratus", juveniles: 2, length: 4 }],
  },
  "a form, in inches": {
    format: 1,
    tank: {
      base: { shape: "rectangle", length: 40, width: 16 },
      height: 18,
      unit: "in",
      lid: true,
      cover: 0.3,
    },
    water: { temperature: 24, pH: 7, generalHardness: 8 },
    groups: [{ species: "puntigrus-tetrazona", form: "long-fin", unsexed: 8 }],
    offerings: [{ food: "dry", place: "midwater" }],
  },
  "a snail that laws name": {
    format: 1,
    tank,
    water: { temperature: 25, pH: 7.5 },
    groups: [{ species: "pomacea-diffusa", unsexed: 2 }],
  },
  "all as it should be": {
    format: 1,
    tank: {
      ...tank,
      lid: true,
      cover: 0.35,
      openWater: 0.5,
      openSurface: 0.6,
      sightBreaks: 4,
      plants: "grown-in",
      substrate: "sand",
      flow: { calmest: "still", strongest: "gentle" },
      filter: { mediaArea: 4, age: 120 },
    },
    water: { temperature: 24, pH: 6.8, generalHardness: 7 },
    groups: [{ species: "paracheirodon-innesi", unsexed: 12 }],
  },
} as const satisfies Readonly<Record<string, PlanData>>;

/** The plan of what is saved, as Node reads it. */
export const planOf = (saved: PlanData) => parsePlan(saved, speciesById).plan;

/** The end of a link to something: deflated, in letters that an address may have. */
export const hashOf = (saved: unknown): string =>
  `#plan=${deflateRawSync(JSON.stringify(saved)).toString("base64url")}`;
