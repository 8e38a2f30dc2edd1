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

test("any distance restricts, none blocks", () => {
  expect(inWater(60).findings).toMatchObject([
    { weight: "restricting", condition: { on: "water.generalHardness", wanted: { min: 5, max: 12 } } },
  ]);
  expect(weighed(inWater(0)).findings).toEqual(["restricting"]);
});

test("past a limit blocks", () => {
  expect(weighed(inWater(30, { limit: { max: 29 } })).findings).toEqual(["blocking"]);
});

test("rain water is too soft for guppies", () => {
  const groups = [{ species: poeciliaReticulata, unsexed: 6 }];
  expect(planBy(waterHardness, groups, { water: { generalHardness: 0.5 } }).outcome).toBe("conditional");
});
