import fc from "fast-check";
import type { Group, Offering, Plan, PlannedTank, PlannedWater } from "../../src/plan";
import { applyForm, classes, type SpeciesProfile } from "../../src/species";
import { currents } from "../../src/species/inner";
import { anySpecies } from "../drawn";
import { runs } from "../runs";

const word = <Class extends string>(of: Readonly<Record<Class, string>>) =>
  fc.constantFrom(...(Object.keys(of) as Class[]));
const share = fc.constantFrom(0, 0.1, 0.25, 0.3, 0.5, 0.75, 1);

const side = fc.integer({ min: 30, max: 240 });
const bases: fc.Arbitrary<PlannedTank["base"]> = fc.oneof(
  fc.record({ shape: fc.constant("rectangle" as const), length: side, width: side }),
  fc.record({ shape: fc.constant("circle" as const), diameter: side }),
  fc.record({
    shape: fc.constant("sector" as const),
    radius: side,
    angle: fc.constantFrom(45, 90, 180, 270),
  }),
  fc.record({
    shape: fc.constant("bowed" as const),
    length: side,
    width: side,
    bow: fc.constantFrom(1, 5, 10),
  }),
  side.map((length) => ({
    shape: "polygon" as const,
    points: [
      [0, 0],
      [length, 0],
      [length, 40],
      [0, 60],
    ] as const,
  })),
);

const flow = fc.tuple(fc.nat(currents.length - 1), fc.nat(currents.length - 1)).map(([a, b]) => ({
  calmest: currents[Math.min(a, b)] ?? "still",
  strongest: currents[Math.max(a, b)] ?? "still",
}));

/** A tank with no more open water than its cover leaves. */
export function openBesideCover<Tank extends Pick<PlannedTank, "cover" | "openWater">>(tank: Tank): Tank {
  const { cover = 0, openWater } = tank;
  return openWater === undefined ? tank : { ...tank, openWater: Math.min(openWater, 1 - cover) };
}

/** Tanks of any shape, with anything that a plan may say of them or may leave out. */
export const tanks: fc.Arbitrary<PlannedTank> = fc
  .record(
    {
      base: bases,
      height: fc.integer({ min: 20, max: 90 }),
      unit: fc.constantFrom("cm" as const, "in" as const),
      measured: fc.constantFrom("inner" as const, "outer" as const),
      glass: fc.constantFrom(0, 0.5, 1),
      waterBelowRim: fc.constantFrom(0, 2, 5),
      lid: fc.boolean(),
      flow,
      cover: share,
      openWater: share,
      openSurface: share,
      sightBreaks: fc.nat(8),
      substrate: word(classes.ground),
      hides: fc.record({ caves: fc.nat(4), wood: fc.nat(4), leaves: fc.nat(40) }, { requiredKeys: [] }),
      plants: fc.constantFrom("none" as const, "planted" as const, "grown-in" as const),
      filter: fc.record({ mediaArea: fc.constantFrom(0, 0.5, 4, 40), age: fc.constantFrom(0, 30, 90) }),
    },
    { requiredKeys: ["base"] },
  )
  .map(openBesideCover);

/** Water, the coolest season never warmer than usual, the hottest day never cooler. */
export const waters: fc.Arbitrary<PlannedWater> = fc.record(
  {
    coolest: fc.integer({ min: 8, max: 16 }),
    temperature: fc.integer({ min: 16, max: 30 }),
    hottest: fc.integer({ min: 30, max: 36 }),
    pH: fc.constantFrom(4.5, 6, 6.5, 7, 7.5, 8.5),
    generalHardness: fc.integer({ min: 0, max: 25 }),
    carbonateHardness: fc.integer({ min: 0, max: 15 }),
    salinity: fc.constantFrom(0, 0.5, 3, 12),
  },
  { requiredKeys: [] },
);

/** A species of the catalog: itself, or one of its forms given in any of the ways there are. */
const kinds: fc.Arbitrary<Pick<Group, "species" | "form">> = anySpecies.chain((species) => {
  const ways = Object.keys(species.forms ?? {}).flatMap((form) => [
    { species, form },
    { species: applyForm(species, form) },
    { species: applyForm(species, form), form },
  ]);
  return fc.constantFrom({ species }, ...ways);
});

/** The greatest length that a plan may give an animal, cm: a little more than is known of it. */
export function longest({ size }: SpeciesProfile): number {
  const known = size?.adultLength?.value.map(({ total }) => total.max) ?? [];
  return known.length > 0 ? 1.2 * Math.max(...known) : Number.POSITIVE_INFINITY;
}

const some = fc.integer({ min: 0, max: 12 });
const counts = fc
  .record({ males: some, females: some, unsexed: some, juveniles: some }, { requiredKeys: [] })
  .map((given) => (Object.values(given).some((count) => count > 0) ? given : { ...given, unsexed: 6 }));

const told = fc.record(
  {
    length: fc.constantFrom(1, 3, 7.5, 20),
    temper: fc.constantFrom("shyer" as const, "typical" as const, "bolder" as const, "bully" as const),
    raises: fc.boolean(),
    entersOn: fc.constantFrom(0, 14),
  },
  { requiredKeys: [] },
);

/** Any number of animals of any species. */
export const group: fc.Arbitrary<Group> = fc
  .tuple(kinds, counts, told)
  .map(([kind, count, { length, ...further }]) => ({
    ...kind,
    ...count,
    ...further,
    ...(length && { length: Math.min(length, longest(kind.species)) }),
  }));

const groups = fc
  .tuple(fc.array(group, { minLength: 1, maxLength: 4 }), fc.boolean())
  .map(([list, named]) => (named ? list.map((one, index) => ({ id: `group ${index}`, ...one })) : list));

export const offering: fc.Arbitrary<Offering> = fc.record(
  { food: word(classes.food), place: word(classes.zone), light: word(classes.light), apart: fc.boolean() },
  { requiredKeys: ["food", "place"] },
);

/** Plans that say something of everything or next to nothing. */
export const plans: fc.Arbitrary<Plan> = fc.record(
  { tank: tanks, water: waters, groups, offerings: fc.array(offering, { maxLength: 4 }) },
  { requiredKeys: ["tank", "groups"] },
);

/** A fixed sample of such plans. */
export const samplePlans = (usual: number): readonly Plan[] => fc.sample(plans, { numRuns: runs(usual) });
