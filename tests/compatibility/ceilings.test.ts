import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPair, assessPlan, type Verdict } from "../../src/compatibility";
import { temperature } from "../../src/compatibility/rules/pair/temperature";
import { territories } from "../../src/compatibility/rules/plan/territories";
import { zones } from "../../src/compatibility/rules/plan/zones";
import { InvalidInputError } from "../../src/errors";
import type { Group, Plan } from "../../src/plan";
import type { SpeciesProfile } from "../../src/species";
import { expectRefused } from "../refused";
import { animal, inAnyNumber, type Stated } from "./animals";
import { planBy, planOf } from "./judging";
import { lieWithin } from "./ranks";

const fourteen = [...Array(14).keys()];
const oneOf = (species: SpeciesProfile): Group => ({ species, unsexed: 1 });

/** Fourteen species, each of which one of two statements is true. */
const disputed = (one: Stated, other: Stated) =>
  fourteen.map((index) => oneOf(animal(`fish-${index}`, one, { also: [other] })));
/** The same in a world: by the bits of a number which statement is true of each. */
const world = (bits: number, one: Stated, other: Stated) =>
  fourteen.map((index) => oneOf(animal(`fish-${index}`, (bits >> index) & 1 ? { ...one, ...other } : one)));

/** The two worlds at the ends, and some of the 16,384 between them. */
const worlds = [0, 2 ** 14 - 1, ...Array.from({ length: 100 }, (_, index) => (index * 7919) % 2 ** 14)];

/** The parties and traits on which a verdict says that sources differ. */
const disputedIn = ({ open }: Verdict) =>
  open.flatMap((question) =>
    question.reason === "disputed" ? [[question.of, question.trait, question.values]] : [],
  );

describe("more worlds than are tried", () => {
  const places: readonly (readonly [string, typeof zones | typeof territories, Stated, Stated])[] = [
    [
      "fourteen disputed floors",
      zones,
      { ...inAnyNumber, "space.zones": ["bottom"], "space.footprint": [{ least: 100, for: 1 }] },
      { "space.footprint": [{ least: 4000, for: 1 }] },
    ],
    [
      "fourteen disputed territories",
      territories,
      { ...inAnyNumber, "space.territory": "none" },
      { "space.territory": { area: 4000, zone: "bottom", holder: "each" } },
    ],
  ];

  test.each(places)(
    "of %s: the bounds hold them all, and the plan says what is disputed",
    (_, rule, one, other) => {
      const [path] = Object.keys(other);
      const verdict = planBy(rule, disputed(one, other), { tank: { sightBreaks: 20 } });
      expect(verdict.outcome).toBe("suitable");
      for (const bits of worlds) {
        const exact = planBy(rule, world(bits, one, other), { tank: { sightBreaks: 20 } });
        expect(lieWithin(exact.bounds, verdict.bounds), String(bits)).toBe(true);
      }
      const atWorst = rule === zones ? "unsuitable" : "conditional";
      expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst });
      const both = [Reflect.get(one, String(path)), Reflect.get(other, String(path))];
      expect(disputedIn(verdict)).toEqual(fourteen.map((index) => [index, path, both]));
    },
  );

  test("even where it is met, or unmet, in each of them", () => {
    const [cramped, roomy] = [
      { length: 20, width: 20 },
      { length: 1000, width: 1000 },
    ].map((sizes) =>
      planBy(zones, disputed(...floors), { tank: { base: { shape: "rectangle", ...sizes } } }),
    );
    expect(cramped?.outcome).toBe("conditional");
    expect(roomy?.outcome).toBe("suitable");
    for (const verdict of [cramped, roomy]) {
      expect(verdict?.bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
      expect(verdict && disputedIn(verdict)).toHaveLength(14);
    }
  });
  const floors = [places[0]?.[2] ?? {}, places[0]?.[3] ?? {}] as const;

  const hundred = Array.from(
    { length: 100 },
    (_, index): Stated => ({
      "water.temperature": { kept: { min: 20 + index / 100, max: 26 } },
    }),
  );
  const many = (id: string) => animal(id, hundred[0], { also: hundred.slice(1) });

  test("a hundred statements of one trait are all tried", () => {
    const cool = animal("cool", { "water.temperature": { kept: { min: 10, max: 20 } } });
    const verdict = assessPair({ species: many("many") }, { species: cool }, { rules: [temperature] });
    // Half a degree on either side leaves 1 K where the one begins at 20 °C, and less than 0.5 K from 20.51 °C on.
    expect(verdict.outcome).toBe("conditional");
    expect(verdict.bounds).toEqual({ atBest: "conditional", atWorst: "unsuitable" });
    expect(disputedIn(verdict)).toMatchObject([[0, "water.temperature", { length: 100 }]]);
  });

  test("a hundred statements of a trait on either side are too many, and the bounds widen", () => {
    const verdict = assessPair({ species: many("a") }, { species: many("b") }, { rules: [temperature] });
    expect(verdict.outcome).toBe("suitable");
    expect(verdict.findings).toMatchObject([{ weight: "favourable" }]);
    expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(disputedIn(verdict).map(([of]) => of)).toEqual([0, 1]);
  });
});

describe("many groups", () => {
  const groups = (count: number): readonly Group[] =>
    Array.from({ length: count }, (_, index) => ({
      species: allSpecies[index % allSpecies.length] ?? paracheirodonInnesi,
      unsexed: 5,
    }));

  test("a hundred get a verdict of all rules", () => {
    expect(assessPlan(planOf(groups(100))).parties).toHaveLength(100);
  });

  test("one more is refused, and the refusal says how many are judged", () => {
    expectRefused(() => assessPlan(planOf(groups(101))), "groups");
    expect(() => assessPlan(planOf(groups(101)))).toThrow(
      /groups: expected a list of at most 100, found 101/,
    );
  });
});

test("more animals than any tank holds are refused, and the refusal says how many are not", () => {
  const plan = planOf([{ species: paracheirodonInnesi, unsexed: 1e15 }]);
  expect(() => assessPlan(plan)).toThrow(/groups\[0\]\.unsexed: expected a whole number from 0 to 1000000/);
  const party = { species: paracheirodonInnesi, count: 1e15 };
  expect(() => assessPair(party, party)).toThrow(/a\.count: expected a whole number from 1 to 1000000/);
});

describe("a profile that ends nowhere", () => {
  /** An object that holds itself. */
  const endless = (also: object = {}): never => {
    const held: Record<string, unknown> = { ...also };
    held.itself = held;
    return held as never;
  };
  const nested = (depth: number): object => {
    let held: object = {};
    for (let level = 0; level < depth; level++) held = { held };
    return held;
  };
  const fact = (value: unknown) => ({ value, basis: "published" }) as never;
  const neon = paracheirodonInnesi;

  const profiles: Readonly<Record<string, () => object>> = {
    "a trait that holds itself": () => ({ ...neon, water: { ...neon.water, pH: fact({ kept: endless() }) } }),
    "a trait nested a hundred thousand deep": () => ({
      ...neon,
      water: { ...neon.water, pH: fact({ kept: nested(100_000) }) },
    }),
    "another value that holds itself": () => ({
      ...neon,
      water: { ...neon.water, pH: { ...neon.water?.pH, also: [{ kept: endless() }] } },
    }),
    "names that hold themselves": () => ({ ...neon, names: { en: [endless()] } }),
    "a taxonomy that holds itself": () => ({ ...neon, taxonomy: endless({ name: "x", kind: "fish" }) }),
    "a listing that holds itself": () => ({ ...neon, listings: [endless({ jurisdiction: endless() })] }),
    "listings that are none": () => ({ ...neon, listings: endless() }),
    "a form that holds itself": () => ({ ...neon, forms: { odd: endless() }, form: undefined }),
  };

  test.each(Object.keys(profiles))("is refused or judged, but never runs away: %s", (name) => {
    const species = profiles[name]?.() as SpeciesProfile;
    const form = name.startsWith("a form") ? { form: "odd" } : {};
    const runs: readonly (() => Verdict)[] = [
      () => assessPair({ species, ...form }, { species: neon }),
      () => assessPair({ species: neon }, { species, ...form }),
      () => assessPlan(planOf([{ species, ...form, unsexed: 6 }])),
    ];
    for (const run of runs) {
      try {
        expect(JSON.stringify(run())).toContain("outcome");
      } catch (error) {
        expect(error).toBeInstanceOf(InvalidInputError);
      }
    }
  });

  test("that holds itself where it counts is refused", () => {
    for (const name of Object.keys(profiles).slice(0, 5)) {
      const plan = planOf([{ species: profiles[name]?.() as SpeciesProfile, unsexed: 6 }]) as Plan;
      expectRefused(() => assessPlan(plan), "groups[0].species");
    }
  });
});
