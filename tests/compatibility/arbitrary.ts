import fc from "fast-check";
import type { Group, PlannedTank, PlannedWater } from "../../src/plan";
import { classes, type TraitValue as Value } from "../../src/species";
import { openBesideCover } from "../plan/arbitrary";
import { adults, adultsBySex, type Stated } from "./animals";
import { type Disputed, only } from "./worlds";

type Act = Value<"temperament.acts">[number];

const oneOf = <Class extends string>(of: Readonly<Record<Class, string>>) =>
  fc.constantFrom(...(Object.keys(of) as Class[]));

/** Spans on a coarse grid, so that they often touch, coincide and lie apart by exactly a threshold. */
const span = (from: number, step: number) =>
  fc
    .tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 4 }))
    .map(([start, width]) => ({ min: from + start * step, max: from + (start + width) * step }));

const figures = (from: number, step: number) =>
  fc.oneof(
    { weight: 4, arbitrary: span(from, step).map((kept) => ({ kept })) },
    {
      weight: 1,
      arbitrary: span(from, step).map((kept) => ({ kept, optimum: kept, standIn: true as const })),
    },
    {
      weight: 1,
      arbitrary: span(from, step).map((kept) => ({
        kept,
        limit: { min: kept.min - step, max: kept.max + step },
      })),
    },
    {
      weight: 1,
      arbitrary: span(from, step).map((kept) => ({ kept, precision: { max: "class" as const } })),
    },
  );

const currents = Object.keys(classes.flow) as (keyof typeof classes.flow)[];
const flow = fc.constantFrom(
  ...currents.flatMap((min, index) => currents.slice(index).map((max) => ({ min, max }))),
);

const deeds = fc.constantFrom<Pick<Act, "does" | "target">>(
  { does: "kills", target: "own-sex" },
  { does: "kills", target: "look-alike" },
  { does: "bites", target: "any" },
  { does: "bites", target: "own-kind" },
  { does: "bites", target: "long-finned" },
  { does: "chases", target: "any" },
  { does: "chases", target: "smaller" },
  { does: "chases", target: "own-kind" },
  { does: "chases", target: "own-sex" },
  { does: "chases", target: "other-sex" },
  { does: "chases", target: "look-alike" },
  { does: "nips-fins", target: "long-finned" },
  { does: "nips-fins", target: "any" },
  { does: "rasps-mucus", target: "any" },
  { does: "robs-food", target: "any" },
);

const circumstances = fc.record(
  {
    doer: oneOf(classes.sex),
    when: oneOf(classes.when),
    from: fc.constantFrom("juvenile" as const, "adult" as const),
  },
  { requiredKeys: [] },
);

const act: fc.Arbitrary<Act> = fc
  .tuple(deeds, circumstances)
  .map(([deed, circumstance]) => ({ ...deed, ...circumstance }));

const eaten = fc.record(
  { prey: oneOf(classes.prey), greatest: fc.constantFrom(2, 5) },
  { requiredKeys: ["prey"] },
);

const centimetres = fc.constantFrom(3, 4, 5, 10, 25);

const rooms = (...stated: Value<"space.baseLength">[]) => fc.constantFrom(...stated);

/** What may be known of a fish, as far as rules read it. */
const known = {
  "water.temperature": figures(18, 1),
  "water.pH": figures(5, 0.5),
  "water.generalHardness": figures(0, 1),
  "water.salinity": figures(0, 1),
  "water.flow": flow,
  "size.adultLength": fc.oneof(
    fc.tuple(centimetres, centimetres).map(([a, b]) => adults(Math.min(a, b), Math.max(a, b))),
    fc.tuple(centimetres, centimetres).map(([male, female]) => adultsBySex(male, female)),
  ),
  "size.bodyShape": oneOf(classes.bodyShape),
  "size.bodyDepthShare": fc.constantFrom(0.2, 0.5, 0.9),
  "space.baseLength": rooms(
    [{ least: 60, for: 6 }],
    [{ least: 120, for: 2 }],
    [
      { least: 60, for: 1 },
      { least: 80, for: 6 },
    ],
  ),
  "space.footprint": rooms(
    [{ least: 1800, for: 4 }],
    [{ least: 6000, for: 2 }],
    [
      { least: 900, for: 1 },
      { least: 2400, for: 6 },
    ],
  ),
  "space.furtherFootprint": fc.constantFrom(100, 1000),
  "space.height": fc.constantFrom(20, 50),
  "space.openWater": fc.constantFrom(0, 0.3, 0.6),
  "space.territory": fc.constantFrom<Value<"space.territory">>(
    "none",
    { area: 500, zone: "bottom", holder: "male" },
    { area: 2000, zone: "bottom", holder: "pair" },
    { area: 800, zone: "surface", holder: "each" },
  ),
  "space.zones": fc.oneof(
    fc.uniqueArray(oneOf(classes.zone), { minLength: 1 }),
    fc.constant(["bottom" as const]),
  ),
  "space.cover": fc.constantFrom(0, 0.2, 0.5),
  "space.grownInPlants": fc.boolean(),
  "space.substrate": fc.subarray(Object.keys(classes.ground) as (keyof typeof classes.ground)[]),
  "space.hides": fc.array(
    fc.record({
      anyOf: fc.subarray(["caves" as const, "wood" as const, "shells" as const], { minLength: 1 }),
      each: fc.constantFrom(1, 2),
      holder: oneOf(classes.territoryHolder),
    }),
    { maxLength: 2 },
  ),
  "space.jumps": oneOf(classes.jumps),
  "temperament.acts": fc.array(act, { maxLength: 3 }),
  "temperament.shy": fc.boolean(),
  "temperament.varies": fc.boolean(),
  "diet.foods": fc.uniqueArray(fc.constantFrom("dry" as const, "live" as const, "algae" as const), {
    minLength: 1,
  }),
  "diet.reach": fc.uniqueArray(oneOf(classes.zone), { minLength: 1 }),
  "diet.light": fc.uniqueArray(oneOf(classes.light), { minLength: 1 }),
  "diet.pace": oneOf(classes.pace),
  "water.oxygenNeed": oneOf(classes.oxygenNeed),
  "water.airBreathing": oneOf(classes.airBreathing).map((kind) => ({ kind })),
  "effects.digs": fc.boolean(),
  "effects.uproots": fc.boolean(),
  "effects.eatsPlants": fc.boolean(),
  "social.living": oneOf(classes.living),
  "social.group": fc.constantFrom<Value<"social.group">>(
    { least: 1 },
    { least: 6 },
    { least: 2, avoid: { min: 3, max: 5 } },
  ),
  "social.femalesPerMale": fc.constantFrom(0, 1, 2),
  "social.settledBy": fc.boolean(),
  "social.settles": fc.boolean(),
  "appearance.looks": fc.array(
    fc.record(
      { tag: fc.constantFrom("upright-bars" as const, "red-body" as const), sex: oneOf(classes.sex) },
      { requiredKeys: ["tag"] },
    ),
    { maxLength: 2 },
  ),
  "appearance.longFins": fc.boolean(),
  "predation.eats": fc.array(eaten, { maxLength: 2 }),
  "reproduction.mode": oneOf(classes.reproduction),
  "reproduction.interbreedsWith": fc.subarray(["a", "b"]),
  "care.sensitive": fc.subarray(["copper" as const, "salt" as const]),
  "care.hazards": fc.subarray(Object.keys(classes.hazard) as (keyof typeof classes.hazard)[]),
} satisfies { [Path in keyof Stated]: fc.Arbitrary<NonNullable<Stated[Path]>> };

const all = fc.record(known);
const some = fc.record(known, { requiredKeys: [] });
const traits: fc.Arbitrary<Stated> = fc.oneof({ weight: 3, arbitrary: all }, { weight: 1, arbitrary: some });

/** What, where and when an animal feeds is the union of what sources say, and never disputed. */
const fed = ["diet.foods", "diet.reach", "diet.light"];

/** A fish of which up to two traits are disputed, out of those of these paths. */
export const fish = (id: string, paths: readonly string[] = Object.keys(known)): fc.Arbitrary<Disputed> =>
  traits.chain((stated) => {
    const open = Object.keys(stated).filter((path) => paths.includes(path) && !fed.includes(path));
    return fc
      .tuple(all, fc.subarray(open, { maxLength: Math.min(2, open.length) }))
      .map(([other, disputed]) => ({ id, stated, also: [only(other, disputed)] }));
  });

/** Who is kept, without the species. */
export const animals = fc
  .record(
    {
      males: fc.integer({ min: 0, max: 3 }),
      females: fc.integer({ min: 0, max: 3 }),
      unsexed: fc.constantFrom(1, 2, 6),
      juveniles: fc.integer({ min: 0, max: 2 }),
      length: fc.constantFrom(1, 2.5, 3.7),
      temper: fc.constantFrom("shyer" as const, "typical" as const, "bolder" as const, "bully" as const),
      raises: fc.boolean(),
    },
    { requiredKeys: ["males"] },
  )
  .filter(
    ({ males, females = 0, unsexed = 0, juveniles = 0 }) => males + females + unsexed + juveniles > 0,
  ) satisfies fc.Arbitrary<Omit<Group, "species">>;

export const tanks = fc
  .record(
    {
      base: fc.record({
        shape: fc.constant("rectangle" as const),
        length: fc.constantFrom(40, 80, 150),
        width: fc.constantFrom(9, 35, 60),
      }),
      height: fc.constantFrom(12, 40),
      lid: fc.boolean(),
      cover: fc.constantFrom(0, 0.3, 0.6),
      openWater: fc.constantFrom(0, 0.3, 0.6),
      openSurface: fc.constantFrom(0, 0.2, 1),
      sightBreaks: fc.constantFrom(0, 1, 4),
      substrate: oneOf(classes.ground),
      hides: fc.record(
        { caves: fc.constantFrom(0, 1, 3), wood: fc.constantFrom(0, 2), shells: fc.constantFrom(0, 9) },
        { requiredKeys: [] },
      ),
      filter: fc.record({ mediaArea: fc.constantFrom(0, 0.5, 100), age: fc.constantFrom(0, 30, 60) }),
      plants: fc.constantFrom("none" as const, "planted" as const, "grown-in" as const),
      flow: flow.map(({ min, max }) => ({ calmest: min, strongest: max })),
    },
    { requiredKeys: ["base", "height"] },
  )
  .map(openBesideCover) satisfies fc.Arbitrary<PlannedTank>;

export const waters = fc
  .record(
    {
      temperature: fc.integer({ min: 16, max: 30 }),
      pH: fc.constantFrom(5, 6, 6.5, 7, 8),
      generalHardness: fc.integer({ min: 0, max: 12 }),
      salinity: fc.integer({ min: 0, max: 8 }),
      hottest: fc.integer({ min: 24, max: 34 }),
      coolest: fc.integer({ min: 10, max: 20 }),
    },
    { requiredKeys: ["temperature", "pH", "generalHardness"] },
  )
  .map(({ hottest, coolest, ...usual }) => ({
    ...usual,
    ...(hottest !== undefined && { hottest: Math.max(hottest, usual.temperature) }),
    ...(coolest !== undefined && { coolest: Math.min(coolest, usual.temperature) }),
  })) satisfies fc.Arbitrary<PlannedWater>;
