import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPair, assessPlan, planRules, type Verdict } from "../../src/compatibility";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { adults, animal, type Stated } from "./animals";
import { planOf } from "./judging";
import { numbersIn } from "./numbers-in";

/** The functions as JavaScript and JSON call them: with anything. */
const pair = (...given: readonly unknown[]): Verdict => Reflect.apply(assessPair, undefined, given);
const plan = (...given: readonly unknown[]): Verdict => Reflect.apply(assessPlan, undefined, given);

/** What a call throws; a test fails where it throws nothing. */
function thrownBy(run: () => unknown): unknown {
  try {
    run();
  } catch (error) {
    return error;
  }
  throw new Error("nothing was thrown");
}

/** That a call is refused with an error of the library that names what was wrong, what would do, and what came. */
function expectRefused(run: () => unknown, subject: string | RegExp) {
  const error = thrownBy(run);
  if (error instanceof OutsideDomainError) {
    expect(error.subject).toMatch(subject);
    expect(error.domain.min).toBeLessThan(error.domain.max);
    return;
  }
  expect(error).toBeInstanceOf(InvalidInputError);
  if (!(error instanceof InvalidInputError)) return;
  expect(error.subject).toMatch(subject);
  expect(error.expected.length).toBeGreaterThan(0);
  expect(error).toHaveProperty("found");
}

const prototypes = ["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"];
const noNumbers = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, "5", null, {}, [5]];

const betta = { species: bettaSplendens };
const neon = { species: paracheirodonInnesi };
const tank = { base: { shape: "rectangle", length: 80, width: 35 }, height: 40 };
const water = { temperature: 25, pH: 7, generalHardness: 8 };
const groups = [{ species: paracheirodonInnesi, unsexed: 10 }];

describe("a party", () => {
  test.each([{ given: undefined }, { given: null }, { given: "betta" }, { given: 42 }, { given: [] }])(
    "that is no party is refused: $given",
    ({ given }) => {
      expectRefused(() => pair(given, neon), /^a/);
      expectRefused(() => pair(neon, given), /^b/);
    },
  );

  test.each([
    { species: undefined },
    { species: null },
    { species: "betta-splendens" },
    { species: {} },
    { species: { id: "betta-splendens" } },
    { species: { id: 1, taxonomy: { name: "x" } } },
    { species: { id: "x", taxonomy: {} } },
  ])("whose species is no profile is refused: $species", ({ species }) => {
    expectRefused(() => pair({ species }, neon), "a.species");
    expectRefused(() => pair(neon, { species }), "b.species");
  });

  test("of no known form is refused, whatever objects are made of", () => {
    for (const form of [...prototypes, "", "no-such-form", 1]) {
      expectRefused(() => pair({ ...betta, form }, neon), /form$/);
    }
  });

  test("of a form that a file names like a prototype is judged as that form", () => {
    const forms = JSON.parse(
      '{ "__proto__": { "names": { "en": ["odd"] }, "appearance": { "longFins": { "value": true, "basis": "published" } } } }',
    );
    const species = { ...animal("odd", { "appearance.longFins": false }), forms };
    const nipper = animal("nipper", { "temperament.acts": [{ does: "nips-fins", target: "long-finned" }] });
    const { findings, parties } = pair({ species: nipper }, { species, form: "__proto__" });
    expect(findings).toContainEqual(expect.objectContaining({ rule: "fin-nipping", to: 1 }));
    expect(parties[1]?.names).toEqual({ en: ["odd"] });
  });

  test("of unknown sex or stage is refused", () => {
    for (const word of [...prototypes, "", "Male", "old", 1, null]) {
      expectRefused(() => pair({ ...betta, sex: word }, neon), "a.sex");
      expectRefused(() => pair({ ...betta, stage: word }, neon), "a.stage");
    }
  });

  test("of a length that cannot be is refused", () => {
    for (const length of [0, -0, -3, ...noNumbers]) {
      expectRefused(() => pair({ ...betta, length }, neon), "a.length");
    }
  });

  test("of a number that cannot be is refused", () => {
    for (const count of [0, -1, 1.5, ...noNumbers]) {
      expectRefused(() => pair({ ...betta, count }, neon), "a.count");
    }
  });
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
    { condition: { on: "tank.colour", is: true } },
    { condition: { on: "toString", is: true } },
    { condition: { on: "group.colour", of: "from", is: true } },
    { condition: { on: "tank.cover", within: { min: Number.NaN } } },
    { condition: { on: "tank.cover" } },
  ])("with a rule whose condition no plan could meet are refused: $condition", ({ condition }) => {
    const rule = {
      id: "x-careless",
      question: "?",
      way: "each-group",
      needs: { from: [] },
      mayYield: ["restricting"],
      judge: () => [{ weight: "restricting", condition }],
    };
    expectRefused(() => plan({ tank: { ...tank, cover: 0.5 }, water, groups }, { rules: [rule] }), /./);
  });

  test("without a single rule give no clean bill", () => {
    expectRefused(() => pair(betta, neon, { rules: [] }), /rule/);
    expectRefused(() => plan({ tank, water, groups }, { rules: [] }), /rule/);
  });

  test("with rules of plans only give a pair no clean bill", () => {
    expectRefused(() => pair(betta, neon, { rules: planRules }), /rule/);
  });
});

describe("a plan", () => {
  test.each([{ given: undefined }, { given: null }, { given: "plan" }, { given: 5 }, { given: [] }])(
    "that is no plan is refused: $given",
    ({ given }) => {
      expectRefused(() => plan(given), /./);
    },
  );

  test("without animals is refused", () => {
    for (const none of [undefined, null, [], {}, "neons", { length: 1 }]) {
      expectRefused(() => plan({ tank, water, groups: none }), "groups");
    }
    expectRefused(() => plan({ tank, water, groups: [neon] }), "groups[0]");
    expectRefused(() => plan({ tank, water, groups: [...groups, { ...neon, males: 0 }] }), "groups[1]");
  });

  test.each([{ group: undefined }, { group: null }, { group: "neons" }, { group: 10 }])(
    "with a group that is none is refused: $group",
    ({ group }) => {
      expectRefused(() => plan({ tank, water, groups: [group] }), /^groups\[0\]/);
    },
  );

  test("with a group of no species is refused", () => {
    for (const species of [undefined, null, "paracheirodon-innesi", {}]) {
      expectRefused(() => plan({ tank, water, groups: [{ species, unsexed: 3 }] }), "groups[0].species");
    }
  });

  test("with numbers of animals that cannot be is refused", () => {
    for (const name of ["males", "females", "unsexed", "juveniles"]) {
      for (const count of [-1, 0.5, ...noNumbers.filter((value) => value !== null)]) {
        expectRefused(
          () => plan({ tank, water, groups: [{ ...neon, unsexed: 3, [name]: count }] }),
          `groups[0].${name}`,
        );
      }
    }
  });

  test("with a length or a day that cannot be is refused", () => {
    for (const length of [0, -3, ...noNumbers]) {
      expectRefused(
        () => plan({ tank, water, groups: [{ ...neon, unsexed: 3, length }] }),
        "groups[0].length",
      );
    }
    for (const entersOn of noNumbers) {
      expectRefused(
        () => plan({ tank, water, groups: [{ ...neon, unsexed: 3, entersOn }] }),
        "groups[0].entersOn",
      );
    }
  });

  test("of an unknown form is refused", () => {
    for (const form of prototypes) {
      expectRefused(() => plan({ tank, water, groups: [{ ...neon, unsexed: 3, form }] }), /form$/);
    }
  });
});

describe("the tank of a plan", () => {
  const inTank = (changes: object | null | undefined) => () =>
    plan({ tank: changes && { ...tank, ...changes }, water, groups });

  test("that is none is refused", () => {
    expectRefused(inTank(undefined), "tank");
    expectRefused(inTank(null), "tank");
  });

  test("that has no size is refused", () => {
    expectRefused(inTank({ base: undefined }), "base.shape");
    expectRefused(inTank({ base: { shape: "constructor" } }), "base.shape");
    for (const size of [0, -40, ...noNumbers]) {
      expectRefused(inTank({ height: size }), "height");
      expectRefused(inTank({ base: { ...tank.base, length: size } }), "base.length");
      expectRefused(inTank({ base: { ...tank.base, width: size } }), "base.width");
    }
  });

  test("with shares past 0 and 1 is refused", () => {
    for (const share of [-0.1, 1.1, 30, ...noNumbers]) {
      expectRefused(inTank({ cover: share }), "tank.cover");
      expectRefused(inTank({ openWater: share }), "tank.openWater");
    }
  });

  test("with a lid or plants of no known kind is refused", () => {
    for (const lid of ["yes", 1, 0, null]) expectRefused(inTank({ lid }), "tank.lid");
    for (const plants of [...prototypes, true, "some", null])
      expectRefused(inTank({ plants }), "tank.plants");
  });

  test.each([
    { flow: null },
    { flow: "gentle" },
    { flow: {} },
    { flow: { calmest: "gentle" } },
    { flow: { calmest: "gentle", strongest: "rapid" } },
    { flow: { calmest: "rapid", strongest: "strong" } },
    { flow: { calmest: "strong", strongest: "still" } },
    { flow: { calmest: "constructor", strongest: "toString" } },
  ])("with a current of no known class is refused: $flow", ({ flow }) => {
    expectRefused(inTank({ flow }), "tank.flow");
  });

  test.each([
    { filter: null },
    { filter: "sponge" },
    { filter: {} },
    { filter: { mediaArea: -1, age: 3 } },
    { filter: { mediaArea: 1, age: Number.NaN } },
  ])("with a filter that cannot be is refused: $filter", ({ filter }) => {
    expectRefused(inTank({ filter }), "tank.filter");
  });

  test("with sight breaks that cannot be is refused", () => {
    for (const sightBreaks of [-1, 0.5, ...noNumbers]) {
      expectRefused(inTank({ sightBreaks }), "tank.sightBreaks");
    }
  });
});

describe("the water of a plan", () => {
  const inWater = (changes: object | null | undefined) => () =>
    plan({ tank, water: changes && { ...water, ...changes }, groups });

  test("that is none is refused", () => {
    expectRefused(inWater(undefined), "water");
    expectRefused(inWater(null), "water");
  });

  test("that is not a number is refused", () => {
    for (const name of ["temperature", "pH", "generalHardness"]) {
      for (const value of [undefined, ...noNumbers]) {
        expectRefused(inWater({ [name]: value }), `water.${name}`);
      }
    }
    for (const name of ["carbonateHardness", "salinity", "hottest", "coolest"]) {
      for (const value of noNumbers) expectRefused(inWater({ [name]: value }), `water.${name}`);
    }
  });

  test("that no aquarium holds is refused: a slip of unit", () => {
    for (const [name, value] of [
      ["temperature", 77],
      ["temperature", 298],
      ["hottest", 86],
      ["coolest", -10],
      ["pH", 14.1],
      ["pH", -1],
      ["generalHardness", -1],
      ["carbonateHardness", 1000],
      ["salinity", 1025],
    ] as const) {
      const error = thrownBy(inWater({ [name]: value }));
      expect(error, name).toBeInstanceOf(OutsideDomainError);
      expect(error).toMatchObject({ subject: `water.${name}`, found: value });
    }
  });

  test("is taken to both ends of what an aquarium may hold", () => {
    for (const ends of [
      { temperature: -2, pH: 0, generalHardness: 0, carbonateHardness: 0, salinity: 0 },
      { temperature: 60, pH: 14, generalHardness: 500, carbonateHardness: 500, salinity: 300 },
    ]) {
      expect(inWater(ends)().outcome).toBe("unsuitable");
    }
  });

  test("whose hottest is below its coolest is refused", () => {
    expectRefused(inWater({ hottest: 20, coolest: 28 }), /water/);
  });
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
    "space.baseLength": { least: 60, for: 6 },
    "space.footprint": { least: 1800, for: 6 },
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
    "tank length": (value) => ({ "space.baseLength": { least: value, for: 6 } }),
    "tank floor": (value) => ({ "space.footprint": { least: value, for: 6 } }),
    "number the floor is for": (value) => ({ "space.footprint": { least: 1800, for: value } }),
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
