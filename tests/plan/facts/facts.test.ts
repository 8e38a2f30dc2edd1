import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { type FactName, facts, fieldsOf, type Plan, planData } from "../../../src/plan";
import { checkedPlan } from "../../../src/plan/checked-plan";
import { adoptedTraits, holds } from "../../../src/plan/facts/condition";
import { factUnits } from "../../../src/plan/facts/fact-units";
import { isOfGroup, isWorded } from "../../../src/plan/facts/read-fact";
import { english } from "../../../src/report";
import { measureOf } from "../../../src/units";
import { expectRefused } from "../../refused";

/** A plan that says everything. */
const plan: Plan = {
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 45,
    lid: true,
    flow: { calmest: "still", strongest: "moderate" },
    cover: 0.3,
    openWater: 0.6,
    openSurface: 0.7,
    sightBreaks: 3,
    substrate: "sand",
    hides: { caves: 2 },
    plants: "planted",
    filter: { mediaArea: 4, age: 90 },
  },
  water: { temperature: 24, pH: 7, generalHardness: 8, salinity: 0, hottest: 27, coolest: 21 },
  groups: [
    { species: danioRerio, form: "long-fin", males: 3, females: 5, unsexed: 1, juveniles: 2, length: 3.5 },
  ],
  offerings: [{ food: "dry", place: "surface" }],
};

const at = (value: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce((held, key) => Object(held)[key], value);

describe.each(Object.entries(facts))("%s", (name, { label, unit, paths }) => {
  test("has words, and the unit that conditions on it have", () => {
    expect(label).toMatch(/^\S.*\S$/);
    expect(unit).toBe(factUnits[name as FactName]);
  });

  test("is answered by fields that a plan has", () => {
    expect(paths.length).toBeGreaterThan(0);
    for (const path of paths) {
      const [first] = path.map((key) => (key === "of" ? 0 : key));
      expect(first).toMatch(/^(tank|water|groups|offerings)$/);
      expect(
        at(
          planData(plan),
          path.map((key) => (key === "of" ? 0 : key)),
        ),
        path.join("."),
      ).toBeDefined();
    }
  });

  test("has its fields in a plan, those of the group it is about or the list of groups", () => {
    const isOfOne = paths.some((path) => path.includes("of"));
    for (const path of fieldsOf(name as FactName, 0)) expect(at(planData(plan), path)).toBeDefined();
    expect(fieldsOf(name as FactName, 0)).toHaveLength(paths.length);
    expect(fieldsOf(name as FactName)).toEqual(isOfOne ? [["groups"]] : paths);
  });

  test("has its clause in every language", () => {
    expect(english.conditions[name as FactName]).toBeTypeOf("function");
  });

  test("is not given once its fields are gone, unless it is known without them", () => {
    const of = isOfGroup(name as FactName) ? { of: 0 } : {};
    const wanted = isWorded(name as FactName) ? { oneOf: ["nothing"] } : { min: -2, max: -1 };
    const bare: Plan = { tank: { base: plan.tank.base }, groups: [{ species: danioRerio, unsexed: 6 }] };
    const checked = checkedPlan(bare);
    const met = holds({ on: name as FactName, ...of, wanted }, checked, adoptedTraits(checked));
    const known = [
      "tank.longestRun",
      "tank.footprint",
      "water.salinity",
      "group.count",
      "group.form",
      "group.grown",
      "group.longFins",
      "group.company",
    ];
    expect(met).toBe(known.includes(name) ? false : undefined);
  });
});

test("fields of a group are named by its place, and of nothing else are there fields", () => {
  expect(fieldsOf("group.males", 2)).toEqual([
    ["groups", 2, "males"],
    ["groups", 2, "females"],
  ]);
  expectRefused(() => fieldsOf("group.colour" as FactName, 0), "fact");
  for (const of of ["x", "0", -1, 0.5, Number.NaN, null])
    for (const fact of ["group.length", "water.pH"] as const)
      expectRefused(() => fieldsOf(fact, of as never), /^of$/);
});

test("units are ones that can be converted, or shares", () => {
  for (const { unit } of Object.values(facts)) {
    if (unit !== undefined && unit !== "1") expect(measureOf(unit)).toMatch(/^[a-z]/);
  }
});

test("numbers without a unit are counts, ratios and the pH", () => {
  const bare = Object.entries(facts).filter(([name, { unit }]) => !unit && !isWorded(name as FactName));
  expect(bare.map(([name]) => name)).toEqual([
    "tank.sightBreaks",
    "tank.hides",
    "water.pH",
    "group.count",
    "group.males",
    "group.females",
    "group.pairs",
    "group.femalesPerMale",
  ]);
});

test("nobody can change them", () => {
  expect(Object.isFrozen(facts)).toBe(true);
  for (const fact of Object.values(facts))
    expect(Object.isFrozen(fact) && Object.isFrozen(fact.paths)).toBe(true);
});
