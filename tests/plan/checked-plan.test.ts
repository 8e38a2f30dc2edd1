import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { checkedPair, checkedPlan } from "../../src/plan/checked-plan";
import { expectRefused } from "../refused";

/** The checks as JavaScript and JSON call them: with anything. */
const pair = (...given: readonly unknown[]): unknown => Reflect.apply(checkedPair, undefined, given);
const plan = (...given: readonly unknown[]): unknown => Reflect.apply(checkedPlan, undefined, given);

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

describe("a plan", () => {
  test.each([{ given: undefined }, { given: null }, { given: "plan" }, { given: 5 }, { given: [] }])(
    "that is no plan is refused: $given",
    ({ given }) => {
      expectRefused(() => plan(given));
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
      for (const count of [-1, 0.5, ...noNumbers]) {
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

  test("of no known temper, or that raises something else than yes or no, is refused", () => {
    for (const temper of [...prototypes, "angry", "", 1, null]) {
      expectRefused(
        () => plan({ tank, water, groups: [{ ...neon, unsexed: 3, temper }] }),
        "groups[0].temper",
      );
      expectRefused(() => pair({ ...betta, temper }, neon), "a.temper");
    }
    for (const raises of ["yes", 1, null]) {
      expectRefused(
        () => plan({ tank, water, groups: [{ ...neon, unsexed: 3, raises }] }),
        "groups[0].raises",
      );
    }
    expectRefused(() => pair({ ...betta, raises: true }, neon), "a.raises");
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
    expectRefused(inTank({ base: undefined }), "tank.base");
    expectRefused(inTank({ base: { shape: "constructor" } }), "tank.base.shape");
    for (const size of [0, -40, ...noNumbers]) {
      expectRefused(inTank({ height: size }), "tank.height");
      expectRefused(inTank({ base: { ...tank.base, length: size } }), "tank.base.length");
      expectRefused(inTank({ base: { ...tank.base, width: size } }), "tank.base.width");
    }
  });

  test("with shares past 0 and 1 is refused", () => {
    for (const share of [-0.1, 1.1, 30, ...noNumbers]) {
      expectRefused(inTank({ cover: share }), "tank.cover");
      expectRefused(inTank({ openWater: share }), "tank.openWater");
    }
  });

  test("with a ground or hiding places of no known kind is refused", () => {
    for (const substrate of [...prototypes, "gravel", true, null])
      expectRefused(inTank({ substrate }), "tank.substrate");
    for (const hides of [null, 3, "caves", ["caves"]]) expectRefused(inTank({ hides }), "tank.hides");
    expectRefused(inTank({ hides: { holes: 3 } }), "tank.hides.holes");
    for (const caves of [-1, 0.5, ...noNumbers])
      expectRefused(inTank({ hides: { caves } }), "tank.hides.caves");
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
  const inWater = (changes: object | undefined) => () =>
    plan({ tank, water: changes && { ...water, ...changes }, groups });

  test("may be left out, and so may each of its figures", () => {
    expect(inWater(undefined)).not.toThrow();
    for (const name of Object.keys(water)) expect(inWater({ [name]: undefined })).not.toThrow();
  });

  test("that is none is refused", () => {
    for (const none of [null, 25, "soft", [7]]) {
      expectRefused(() => plan({ tank, water: none, groups }), "water");
    }
  });

  test("that is not a number is refused", () => {
    const names = [...Object.keys(water), "carbonateHardness", "salinity", "hottest", "coolest"];
    for (const name of names) {
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
      expectRefused(inWater({ [name]: value }), `water.${name}`);
    }
  });

  test("is taken to both ends of what an aquarium may hold", () => {
    for (const ends of [
      { temperature: -2, pH: 3, generalHardness: 0, carbonateHardness: 0, salinity: 0 },
      { temperature: 48, pH: 11, generalHardness: 60, carbonateHardness: 60, salinity: 120 },
    ]) {
      expect(inWater(ends)).not.toThrow();
    }
  });

  test("whose hottest is below its coolest is refused", () => {
    expectRefused(inWater({ hottest: 20, coolest: 28 }), /water/);
  });
});
