import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { assessPair, pairPlan } from "../../../src/compatibility";
import { anySpecies, hashOf, someSpecies } from "../../drawn";
import { runs, seedOf } from "../../runs";
import { formsOf, impossible, ofEachSex, pairBreaches, planBreaches, randomPlans } from "../promise";

const kinds = anySpecies.chain((species) => fc.constantFrom(...formsOf(species).flatMap(ofEachSex)));

describe("what a verdict promises", () => {
  test("is kept by a plan of the two, for pairs of the catalog, of either sex and of every form", () => {
    const pairs = fc.sample(fc.tuple(kinds, kinds), { numRuns: runs(150) });
    expect(pairs.flatMap(([a, b]) => pairBreaches(a, b))).toEqual([]);
  }, 300_000);

  test("is kept by a witness that changes only what conditions name or nobody gave, for any plan", () => {
    expect(randomPlans(runs(60), seedOf(0)).flatMap(planBreaches)).toEqual([]);
  }, 300_000);
});

test("a male beside those that only its females could not live with has a plan of males", () => {
  const beside: readonly (readonly [male: string, form: string | undefined, other: string])[] = [
    ["apistogramma-cacatuoides", "gold", "labidochromis-caeruleus"], // females are chased for good
    ["mikrogeophagus-altispinosus", "long-fin", "labidochromis-caeruleus"],
    ["hypancistrus-zebra", undefined, "labidochromis-caeruleus"],
    ["phenacogrammus-interruptus", undefined, "labidochromis-caeruleus"],
    ["apistogramma-agassizii", undefined, "ctenopoma-acutirostre"], // eaten
  ];
  const found = beside.map(([id, form, other]) => {
    const [one, company] = [speciesById(id), speciesById(other)];
    if (!one || !company) return `${id} or ${other} is not there`;
    const male = { species: one, form, sex: "male" } as const;
    const plan = pairPlan(male, { species: company });
    const { males = 0, females = 0 } = plan?.groups[0] ?? {};
    return { breaches: pairBreaches(male, { species: company }), alone: males > 1 && females === 0 };
  });
  expect(found).toEqual(beside.map(() => ({ breaches: [], alone: true })));
}, 60_000);

test("one animal, of which everything is said, is told at once what it needs with all that join it", () => {
  const tank = {
    base: { shape: "rectangle", length: 1000, width: 500 },
    height: 100,
    lid: false,
    cover: 0,
    openWater: 0,
    openSurface: 0,
    sightBreaks: 0,
    substrate: "pebbles",
    plants: "none",
    hides: {},
    flow: { calmest: "gentle", strongest: "gentle" },
    filter: { mediaArea: 0, age: 0 },
  } as const;
  const water = { temperature: 20, hottest: 30, coolest: 10, pH: 7, generalHardness: 8, salinity: 0 };
  const kept = [{ unsexed: 1 }, { males: 1, temper: "bully" }, { juveniles: 1, length: 1 }] as const;
  const plans = someSpecies(40, seedOf(0)).flatMap((one) =>
    kept.map((count) => ({ tank, water, groups: [{ species: one, ...count }], offerings: [] })),
  );
  expect(plans.flatMap(planBreaches)).toEqual([]);
}, 300_000);

test("no pair of the catalog is asked for what its animals cannot be", () => {
  const asked = allSpecies.flatMap((a) =>
    someSpecies(20, hashOf(a.id)).flatMap((b) => {
      const verdict = assessPair({ species: a }, { species: b });
      return impossible(verdict, [a, b]).map((breach) => `${a.id} beside ${b.id}: ${breach}`);
    }),
  );
  expect(asked).toEqual([]);
}, 300_000);
