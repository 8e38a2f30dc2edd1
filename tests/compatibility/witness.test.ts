import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPair } from "../../src/compatibility";
import { runs, seedOf, someOf } from "../runs";
import { impossible, pairBreaches, planBreaches, randomPlans } from "./promise";

const species = fc.constantFrom(...allSpecies);

describe("what a verdict promises", () => {
  test("is kept by a plan of the two, for pairs of the catalog", () => {
    const pairs = fc.sample(fc.tuple(species, species), { numRuns: runs(100) });
    expect(pairs.flatMap(([a, b]) => pairBreaches(a, b))).toEqual([]);
  }, 300_000);

  test("is kept by a witness that changes only what conditions name or nobody gave, for any plan", () => {
    expect(randomPlans(runs(60), seedOf(0)).flatMap(planBreaches)).toEqual([]);
  }, 300_000);
});

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
  const plans = someOf(allSpecies, 40, seedOf(0)).flatMap((one) =>
    kept.map((count) => ({ tank, water, groups: [{ species: one, ...count }], offerings: [] })),
  );
  expect(plans.flatMap(planBreaches)).toEqual([]);
}, 300_000);

test("no pair of the catalog is asked for what its animals cannot be", () => {
  const asked = allSpecies.flatMap((a, index) =>
    someOf(allSpecies, 20, index).flatMap((b) => {
      const verdict = assessPair({ species: a }, { species: b });
      return impossible(verdict, [a, b]).map((breach) => `${a.id} beside ${b.id}: ${breach}`);
    }),
  );
  expect(asked).toEqual([]);
}, 300_000);
