import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPair, assessPlan, defineRule, planRules, type Verdict } from "../../src/compatibility";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { expectRefused } from "../refused";
import { adults, animal, type Stated } from "./animals";
import { planOf } from "./judging";
import { numbersIn } from "./numbers-in";

/** The functions as JavaScript and JSON call them: with anything. */
const pair = (...given: readonly unknown[]): Verdict => Reflect.apply(assessPair, undefined, given);
const plan = (...given: readonly unknown[]): Verdict => Reflect.apply(assessPlan, undefined, given);

const prototypes = ["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"];

const betta = { species: bettaSplendens };
const neon = { species: paracheirodonInnesi };
const tank = { base: { shape: "rectangle", length: 80, width: 35 }, height: 40 };
const water = { temperature: 25, pH: 7, generalHardness: 8 };
const groups = [{ species: paracheirodonInnesi, unsexed: 10 }];

describe("a party", () => {
  test("of a form that a file names like a prototype is judged as that form", () => {
    const forms = JSON.parse(
      '{ "__proto__": { "names": { "en": ["odd"] }, "appearance": { "longFins": { "value": true, "basis": "published" } } } }',
    );
    const sized = { "size.adultLength": adults(5) };
    const species = { ...animal("odd", { ...sized, "appearance.longFins": false }), forms };
    const nipper = animal("nipper", {
      ...sized,
      "temperament.acts": [{ does: "nips-fins", target: "long-finned" }],
    });
    const { findings, parties } = pair({ species: nipper }, { species, form: "__proto__" });
    expect(findings).toContainEqual(expect.objectContaining({ rule: "fin-nipping", to: 1 }));
    expect(parties[1]?.names).toEqual({ en: ["odd"] });
  });
});

test("a species in place of a party or a group is refused in one line that says what is asked for", () => {
  const problemsOf = (judge: () => unknown) => {
    try {
      judge();
    } catch (error) {
      if (error instanceof InvalidInputError) return error.problems;
    }
    return [];
  };
  expect(problemsOf(() => pair(bettaSplendens, neon))).toMatchObject([
    { path: ["a"], code: "type", expected: "an object with species" },
  ]);
  expect(problemsOf(() => plan({ tank, water, groups: [paracheirodonInnesi] }))).toMatchObject([
    { path: ["groups", 0], code: "type", expected: "an object with species" },
  ]);
});

describe("options", () => {
  test("that are none are refused", () => {
    expectRefused(() => pair(betta, neon, null), /option/);
    expectRefused(() => plan({ tank, water, groups }, null), /option/);
  });

  test.each([{ thresholds: null }, { thresholds: "strict" }, { thresholds: [1] }])(
    "with thresholds that are none are refused: $thresholds",
    ({ thresholds }) => {
      expectRefused(() => pair(betta, neon, { thresholds }), /threshold/);
    },
  );

  test.each([
    { rules: null },
    { rules: {} },
    { rules: "temperature" },
    { rules: [undefined] },
    { rules: ["temperature"] },
    { rules: [{}] },
  ])("with rules that are none are refused: $rules", ({ rules }) => {
    expectRefused(() => pair(betta, neon, { rules }), /rule/);
    expectRefused(() => plan({ tank, water, groups }, { rules }), /rule/);
  });

  test.each([
    { condition: undefined },
    { condition: null },
    { condition: { on: "tank.colour", wanted: { oneOf: [true] } } },
    { condition: { on: "toString", wanted: { oneOf: [true] } } },
    { condition: { on: "group.colour", of: "from", wanted: { oneOf: [true] } } },
    { condition: { on: "tank.cover", wanted: { min: Number.NaN } } },
    { condition: { on: "tank.cover" } },
  ])("with a rule whose condition no plan could meet are refused: $condition", ({ condition }) => {
    const rule = defineRule({
      id: "x-careless",
      way: "each-group",
      mayYield: ["restricting"],
      judge: () => [{ weight: "restricting", condition: condition as never }],
    });
    expectRefused(
      () => plan({ tank: { ...tank, cover: 0.5 }, water, groups }, { rules: [rule] }),
      /condition/,
    );
  });

  test("without a single rule give no clean bill", () => {
    expectRefused(() => pair(betta, neon, { rules: [] }), /rule/);
    expectRefused(() => plan({ tank, water, groups }, { rules: [] }), /rule/);
  });

  test("with rules of plans only give a pair no clean bill", () => {
    expectRefused(() => pair(betta, neon, { rules: planRules }), /rule/);
  });
});

test("water at either end of what an aquarium may hold gets a verdict", () => {
  for (const ends of [
    { temperature: -2, pH: 3, generalHardness: 0, carbonateHardness: 0, salinity: 0 },
    { temperature: 48, pH: 11, generalHardness: 60, carbonateHardness: 60, salinity: 120 },
  ]) {
    const { outcome, conditions } = plan({ tank, water: ends, groups });
    expect(outcome).toBe("conditional");
    expect(conditions.map(({ on }) => on)).toContain("water.temperature");
  }
});

test("what a plan or a party is refused for, its verdict is", () => {
  expectRefused(() => plan({ tank, water, groups: [] }), "groups");
  expectRefused(() => pair({ ...betta, count: 0 }, neon), "a.count");
});

describe("a profile written by hand", () => {
  const sound: Stated = {
    "water.temperature": { kept: { min: 22, max: 26 } },
    "water.pH": { kept: { min: 6, max: 7.5 } },
    "water.generalHardness": { kept: { min: 2, max: 12 } },
    "water.salinity": { kept: { min: 0, max: 0.5 } },
    "water.flow": { min: "still", max: "gentle" },
    "size.adultLength": adults(4),
    "size.bodyDepthShare": 0.3,
    "space.baseLength": [{ least: 60, for: 6 }],
    "space.footprint": [{ least: 1800, for: 6 }],
    "space.furtherFootprint": 100,
    "space.cover": 0.3,
    "social.living": "shoal",
    "social.group": { least: 8 },
    "social.femalesPerMale": 1,
    "predation.eats": [{ prey: "fish", greatest: 3 }],
    "temperament.acts": [{ does: "chases", target: "own-kind" }],
  };
  const judged = (stated: Stated) => {
    const species = animal("by-hand", { ...sound, ...stated });
    const other = animal("other", { ...sound, "predation.eats": [{ prey: "fish" }] });
    return [
      () => pair({ species }, { species: other }),
      () => pair({ species: other }, { species }),
      () => pair({ species, length: 4 }, { species }),
      () =>
        plan(
          planOf([
            { species, unsexed: 10 },
            { species: other, unsexed: 10 },
          ]),
        ),
      () => plan(planOf([{ species, unsexed: 1 }])),
    ];
  };

  /** How often it is refused. Where it is not, the verdict must hold finite numbers only. */
  function refusals(stated: Stated): number {
    return judged(stated).filter((run) => {
      try {
        expect(numbersIn(run()).filter((number) => !Number.isFinite(number))).toEqual([]);
        return false;
      } catch (error) {
        if (error instanceof InvalidInputError || error instanceof OutsideDomainError) return true;
        throw error;
      }
    }).length;
  }

  test("is judged where it is sound", () => {
    expect(refusals({})).toBe(0);
  });

  const spans = ["water.temperature", "water.pH", "water.generalHardness", "water.salinity"] as const;
  test.each(spans)("with a span in %s that is none is refused by pair and plan", (path) => {
    for (const kept of [
      { min: 90, max: 80 },
      { min: 26, max: 22 },
      { min: Number.NaN, max: 22 },
      { min: 22, max: Number.NaN },
      { min: 1, max: Number.POSITIVE_INFINITY },
      { min: Number.NEGATIVE_INFINITY, max: -30 },
      {},
    ]) {
      expect(refusals({ [path]: { kept } }), `${kept.min} to ${kept.max}`).toBe(5);
    }
  });

  test.each([
    ["rapid", "strong"],
    ["still", "rapid"],
    ["strong", "still"],
    ["constructor", "toString"],
  ])("with a current from %s to %s is refused by pair and plan", (min, max) => {
    expect(Reflect.apply(refusals, undefined, [{ "water.flow": { min, max } }])).toBe(5);
  });

  const figures: Readonly<Record<string, (value: number) => Stated>> = {
    "adult length": (value) => ({ "size.adultLength": adults(value) }),
    "body depth": (value) => ({ "size.bodyDepthShare": value, "size.adultLength": adults(1.5) }),
    "tank length": (value) => ({ "space.baseLength": [{ least: value, for: 6 }] }),
    "tank floor": (value) => ({ "space.footprint": [{ least: value, for: 6 }] }),
    "number the floor is for": (value) => ({ "space.footprint": [{ least: 1800, for: value }] }),
    "further floor": (value) => ({ "space.furtherFootprint": value }),
    cover: (value) => ({ "space.cover": value }),
    "least number": (value) => ({ "social.group": { least: value } }),
    "females for each male": (value) => ({ "social.femalesPerMale": value }),
    "greatest prey": (value) => ({ "predation.eats": [{ prey: "fish", greatest: value }] }),
  };

  test.each(Object.keys(figures))(
    "with no finite number for %s is refused, and no verdict holds it",
    (name) => {
      for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
        const stated = figures[name]?.(value) ?? {};
        expect(refusals(stated), `${value}`).toBeGreaterThan(0);
      }
    },
  );

  test("that knows its length and states none is refused by pair and plan, not taken to be harmless", () => {
    expect(refusals({ "size.adultLength": [] })).toBe(5);
  });

  test("with figures of nought never gives a verdict that is no number", () => {
    for (const stated of Object.values(figures)) expect(refusals(stated(0))).toBeLessThanOrEqual(5);
  });
});

describe("text in a profile", () => {
  const hostile = '<img src=x onerror="alert(1)">\n# [a](javascript:alert(1)) \u202e {{process.exit()}} \0';

  test("is data, whatever it says", () => {
    const species = {
      ...animal(hostile, { "social.living": "shoal" }),
      names: { en: [hostile], ["__proto__"]: [hostile] },
    };
    const verdict = pair({ species }, { species });
    expect(verdict.parties[0]).toMatchObject({ id: hostile, name: hostile });
    expect(verdict.parties[0]?.names.en).toEqual([hostile]);
    expect(JSON.parse(JSON.stringify(verdict))).toEqual(verdict);
  });

  test("of names like prototypes stays where it is put", () => {
    for (const id of prototypes) {
      const species = animal(id, { "reproduction.interbreedsWith": ["__proto__", "constructor"] });
      expect(pair({ species }, { species: animal("other") }).parties[0]?.id).toBe(id);
    }
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
    expect({}).not.toHaveProperty("en");
  });
});
