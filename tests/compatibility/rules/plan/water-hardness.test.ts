import { expect, test } from "vitest";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import { waterHardness } from "../../../../src/compatibility/rules/plan/water-hardness";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const inWater = (generalHardness: number, more: Partial<Value<"water.generalHardness">> = {}) =>
  planBy(
    waterHardness,
    [
      {
        species: animal("fish", { "water.generalHardness": { kept: { min: 5, max: 12 }, ...more } }),
        unsexed: 1,
      },
    ],
    { water: { generalHardness } },
  );

test("both ends of the kept span are in it", () => {
  for (const hardness of [5, 12]) {
    expect(weighed(inWater(hardness))).toEqual({ findings: [], met: ["restricting"] });
  }
});

test("each end gives way by two degrees, a handbook's class by four, never below none", () => {
  for (const hardness of [3, 14]) {
    expect(weighed(inWater(hardness))).toEqual({ findings: ["advisory"], met: ["restricting"] });
  }
  for (const hardness of [2.9, 14.1]) expect(weighed(inWater(hardness)).findings).toEqual(["restricting"]);
  const precision = { max: "class" } as const;
  expect(weighed(inWater(16, { precision })).findings).toEqual(["advisory"]);
  expect(inWater(30, { kept: { min: 1, max: 12 } }).conditions).toMatchObject([
    { wanted: { min: 0, max: 14 }, aim: { min: 1, max: 12 } },
  ]);
});

test("any distance restricts, none blocks", () => {
  expect(inWater(60).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "water.generalHardness", wanted: { min: 3, max: 14 }, aim: { min: 5, max: 12 } },
    },
  ]);
  expect(weighed(inWater(0)).findings).toEqual(["restricting"]);
});

test("past a limit it says so", () => {
  expect(inWater(30, { limit: { max: 13 } }).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { max: 13 } }, measures: { limit: { max: 13 } } },
  ]);
});

test("rain water is too soft for guppies", () => {
  const groups = [{ species: poeciliaReticulata, unsexed: 6 }];
  expect(planBy(waterHardness, groups, { water: { generalHardness: 0.5 } }).outcome).toBe("conditional");
});
