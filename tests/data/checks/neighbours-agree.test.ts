import { expect, test } from "vitest";
import { neighboursAgree } from "../../../data/checks/neighbours-agree";
import type { StatedValue, Statements } from "../../../src/species";
import { foundBy } from "./found";

type Act = Exclude<StatedValue<"temperament.acts">, "none">;

/** The least that so many animals need: cm of length, or cm² of floor. */
const needs = (number: number, least: number) => ({
  by: "common-practice" as const,
  value: { for: number, least },
});
type Rooms = ReturnType<typeof needs>[];

const cases: [string, { baseLength: Rooms; footprint: Rooms }, string[]][] = [
  [
    "more room for more animals",
    { baseLength: [needs(6, 80), needs(12, 100)], footprint: [needs(6, 3000), needs(12, 4000)] },
    [],
  ],
  [
    "as much room for more animals, the larger number said first",
    { baseLength: [needs(12, 80), needs(6, 80)], footprint: [needs(6, 3000), needs(12, 3000)] },
    [],
  ],
  [
    "a shorter tank for more animals",
    { baseLength: [needs(12, 70), needs(6, 80)], footprint: [needs(6, 3000)] },
    ["data/species/danio-rerio.json: a smaller tank for more animals"],
  ],
  [
    "a smaller floor for more animals",
    { baseLength: [needs(6, 80)], footprint: [needs(12, 2900), needs(6, 3000)] },
    ["data/species/danio-rerio.json: a smaller tank for more animals"],
  ],
];

test.each(cases)("%s", async (_, space, found) => {
  expect(await foundBy(neighboursAgree, { space })).toStrictEqual(found);
});

const said = <Value>(value: Value) => [{ by: "common-practice" as const, value }];
const long = (value: number) =>
  [{ ...said(value)[0], by: "common-practice", as: "usual", measure: "TL" }] as const;
const tank = (least: number) => [needs(1, least)];
const danio = "data/species/danio-rerio.json";

test.each([
  [16, 4, []],
  [15, 4, [`${danio}: a tank less than four times as long as the animal`]],
  [160, 4, []],
  [161, 4, [`${danio}: a tank more than forty times as long as the animal`]],
])("a tank of %i cm for an animal of %i cm", async (least, length, found) => {
  const fields = { size: { adultLength: long(length) }, space: { baseLength: tank(least) } };
  expect(await foundBy(neighboursAgree, fields)).toStrictEqual(found);
});

test("who drowns without air comes to the surface", async () => {
  const airBreathing = said({ kind: "obligate" } as const);
  const found = (zone: "surface" | "bottom") =>
    foundBy(neighboursAgree, { water: { airBreathing }, space: { zones: said(zone) } });
  expect(await found("surface")).toStrictEqual([]);
  expect(await found("bottom")).toStrictEqual([
    `${danio}: an animal that drowns without air and never comes to the surface`,
  ]);
});

test("a fish of 4 cm grows thirteen years old, and not fourteen", async () => {
  const found = (years: number) =>
    foundBy(neighboursAgree, {
      size: {
        adultLength: long(4),
        lifespan: [{ by: "common-practice", value: years, as: "greatest" }],
      },
    });
  expect(await found(13)).toStrictEqual([]);
  expect(await found(14)).toStrictEqual([`${danio}: an age that no animal of its length reaches`]);
});

test("a largest group is no smaller than the least", async () => {
  const found = (most: number) =>
    foundBy(neighboursAgree, { social: { group: said({ least: 8 }), largestGroup: said(most) } });
  expect(await found(8)).toStrictEqual([]);
  expect(await found(7)).toStrictEqual([`${danio}: a largest group smaller than the least`]);
});

test("a cool season lies in the water that the animal is kept in", async () => {
  const kept = [{ by: "common-practice" as const, value: { min: 16, max: 24 }, as: "kept" as const }];
  const found = (season: "none" | { min: number; max: number }) =>
    foundBy(neighboursAgree, { water: { temperature: kept, coolSeason: said(season) } });
  const outside = [`${danio}: a cool season outside of the water it is kept in`];
  expect(await found("none")).toStrictEqual([]);
  expect(await found({ min: 16, max: 20 })).toStrictEqual([]);
  expect(await found({ min: 12, max: 20 })).toStrictEqual(outside);
  expect(await found({ min: 20, max: 26 })).toStrictEqual(outside);
});

test.each([
  ["fish", "fry", "grown fish eaten, and fry left alone"],
  ["fish", "shrimp", "fish eaten, and shrimps left alone"],
  ["shrimp", "shrimplet", "grown shrimps eaten, and shrimplets left alone"],
  ["snail", "young-snail", "grown snails eaten, and their young left alone"],
  ["crayfish", "young-crayfish", "grown crayfish eaten, and their young left alone"],
  ["crab", "young-crab", "grown crabs eaten, and their young left alone"],
  ["frog", "tadpole", "grown frogs eaten, and tadpoles left alone"],
] as const)("who eats %s eats %s", async (grown, other, told) => {
  const found = (...prey: readonly (typeof grown | typeof other)[]) =>
    foundBy(neighboursAgree, { predation: { eats: prey.flatMap((one) => said({ prey: one })) } });
  expect(await found(grown)).toContain(`${danio}: ${told}`);
  expect(await found(grown, other)).not.toContain(`${danio}: ${told}`);
  expect(await found(other)).not.toContain(`${danio}: ${told}`);
});

const withItsKind = ["pair", "harem", "group", "shoal", "either"] as const;
const killer = (living: StatedValue<"social.living">, act: Omit<Act, "does">) =>
  foundBy(neighboursAgree, {
    social: { living: said(living) },
    temperament: { acts: said({ does: "kills", ...act } as const) },
  });
const slain = [`${danio}: an animal that lives with its kind and kills it at any time`];

test.each(withItsKind)(
  "who lives as %s does not kill its kind at any time, but may at times",
  async (living) => {
    for (const target of ["own-kind", "other-sex", "any"] as const)
      expect(await killer(living, { target })).toStrictEqual(slain);
    expect(await killer(living, { target: "own-kind", when: "always" })).toStrictEqual(slain);
    for (const when of ["crowded", "guarding-brood", "breeding"] as const)
      expect(await killer(living, { target: "own-kind", when })).toStrictEqual([]);
    for (const target of ["smaller", "look-alike"] as const)
      expect(await killer(living, { target })).toStrictEqual([]);
  },
);

test("rivals die where there is more than one of a sex, and alone nobody does", async () => {
  const rival = { target: "own-sex", doer: "male" } as const;
  for (const living of ["group", "shoal", "either"] as const)
    expect(await killer(living, rival)).toStrictEqual(slain);
  for (const living of ["pair", "harem", "alone"] as const)
    expect(await killer(living, rival)).toStrictEqual([]);
  expect(await killer("alone", { target: "own-kind" })).toStrictEqual([]);
});

test("a form is held to what it states and to what it has of its species", async () => {
  const kept = (min: number) => [
    { by: "common-practice" as const, value: { min, max: 24 }, as: "kept" as const },
  ];
  const species = { temperature: kept(4), coolSeason: said({ min: 4, max: 12 }) };
  const ofForm = (water: Statements["water"]) =>
    foundBy(neighboursAgree, {
      water: species,
      forms: { fancy: { names: { en: ["fancy danio"] }, water } },
    });
  const warm = { temperature: kept(16) };
  expect(await ofForm(warm)).toStrictEqual([`${danio}: a cool season outside of the water it is kept in`]);
  expect(await ofForm({ ...warm, coolSeason: said("none" as const) })).toStrictEqual([]);
});

type Fields = Parameters<typeof foundBy>[1];
const aged = (value: number, as: "usual" | "greatest") => ({ by: "common-practice" as const, value, as });
const span = (min: number, max: number) => [
  { by: "common-practice" as const, value: { min, max }, as: "kept" as const },
];
const living = (how: StatedValue<"social.living">, largest: number): Fields => ({
  social: { living: said(how), largestGroup: said(largest) },
});
const claims = (area: number, zone: "surface" | "bottom"): Fields => ({
  space: {
    footprint: [needs(1, 1000)],
    territory: said({ area, zone, holder: "each" } as const),
    zones: said("bottom" as const),
  },
});
const further = (value: number): Fields => ({
  space: { footprint: [needs(6, 3000)], furtherFootprint: said(value) },
});
const fed = (type: StatedValue<"diet.type">, ...foods: StatedValue<"diet.foods">[]): Fields => ({
  diet: { type: said(type), foods: foods.flatMap(said) },
});
const eater = (food: StatedValue<"diet.foods">, prey: "egg" | "mussel"): Fields => ({
  diet: { foods: said(food) },
  predation: { eats: said({ prey }) },
});
const salted = (max: number, waters: "fresh" | "brackish"): Fields => ({
  origin: { waters: said(waters) },
  water: { salinity: span(0, max) },
});

const weighs = (a: number): Fields => ({
  size: { adultLength: long(10), bodyShape: said("fusiform"), lengthWeight: said({ a, b: 3.04 }) },
});

test.each<[string, Fields, Fields]>([
  [
    "a mass of more than five times that of fish of its shape, or less than a fifth",
    weighs(0.01122),
    weighs(0.1122),
  ],
  [
    "a mass of more than five times that of fish of its shape, or less than a fifth",
    weighs(0.01122),
    weighs(0.001122),
  ],
  [
    "a usual age above the greatest",
    { size: { lifespan: [aged(4, "usual"), aged(4, "greatest")] } },
    { size: { lifespan: [aged(5, "usual"), aged(4, "greatest")] } },
  ],
  [
    "an animal that is grown when it has died",
    { size: { lifespan: [aged(2, "usual")], grownAt: said(24) } },
    { size: { lifespan: [aged(2, "usual")], grownAt: said(25) } },
  ],
  [
    "an animal that breeds only when half its life is over",
    { size: { lifespan: [aged(2, "usual")] }, reproduction: { breedsFrom: said(12) } },
    { size: { lifespan: [aged(2, "usual")] }, reproduction: { breedsFrom: said(13) } },
  ],
  [
    "a cool season that is no cooler",
    { water: { temperature: span(18, 24), coolSeason: said({ min: 18, max: 23 }) } },
    { water: { temperature: span(18, 24), coolSeason: said({ min: 23, max: 24 }) } },
  ],
  ["brackish water for an animal of fresh water alone", salted(5, "fresh"), salted(6, "fresh")],
  ["brackish water for an animal of fresh water alone", salted(6, "brackish"), salted(6, "fresh")],
  [
    "more cover and open water than the plan has room for",
    { space: { cover: said(0.4), openWater: said(0.6) } },
    { space: { cover: said(0.5), openWater: said(0.6) } },
  ],
  ["a territory where the animal never is", claims(800, "bottom"), claims(800, "surface")],
  [
    "a territory of more than twice the floor that it is to have",
    claims(2000, "bottom"),
    claims(2001, "bottom"),
  ],
  ["for one more animal more floor than the first have, or less than a tenth", further(500), further(501)],
  ["for one more animal more floor than the first have, or less than a tenth", further(50), further(49)],
  [
    "a tank for fewer animals than live together",
    { social: { group: said({ least: 6 }) }, space: { baseLength: [needs(1, 40), needs(6, 60)] } },
    { social: { group: said({ least: 6 }) }, space: { baseLength: [needs(1, 40), needs(5, 60)] } },
  ],
  ["a largest group that is not how it lives", living("alone", 1), living("alone", 2)],
  ["a largest group that is not how it lives", living("pair", 2), living("pair", 1)],
  ["a largest group that is not how it lives", living("shoal", 3), living("shoal", 2)],
  [
    "a plant eater of whose foods none grows, or a meat eater of whose foods none was alive",
    fed("herbivore", "dry", "algae"),
    fed("herbivore", "dry", "worms"),
  ],
  [
    "a plant eater of whose foods none grows, or a meat eater of whose foods none was alive",
    fed("carnivore", "dry", "worms"),
    fed("carnivore", "dry", "algae"),
  ],
  [
    "molluscs among its foods, and none eaten of its tank mates",
    eater("molluscs", "mussel"),
    eater("molluscs", "egg"),
  ],
])("%s is found, and nothing is where it is mended", async (told, mended, broken) => {
  expect(await foundBy(neighboursAgree, mended)).toStrictEqual([]);
  expect(await foundBy(neighboursAgree, broken)).toStrictEqual([`${danio}: ${told}`]);
});

test("who feeds on fish eats some of its tank mates, the young at least", async () => {
  const found = (prey: "egg" | "fry") =>
    foundBy(neighboursAgree, { diet: { foods: said("fish") }, predation: { eats: said({ prey } as const) } });
  expect(await found("fry")).toStrictEqual([]);
  expect(await found("egg")).toStrictEqual([
    `${danio}: fish among its foods, and none eaten of its tank mates`,
  ]);
  expect(await foundBy(neighboursAgree, { diet: { foods: said("fish") } })).toStrictEqual([]);
});
