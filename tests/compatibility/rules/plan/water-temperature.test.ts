import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import { waterTemperature } from "../../../../src/compatibility/rules/plan/water-temperature";
import type { PlannedWater } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

type Figures = Value<"water.temperature">;

const inWater = (water: Partial<PlannedWater>, more: Partial<Figures> = {}) =>
  planBy(
    waterTemperature,
    [
      {
        species: animal("fish", { "water.temperature": { kept: { min: 20, max: 26 }, ...more } }),
        unsexed: 1,
      },
    ],
    { water },
  );

test("both ends of the kept span are in it", () => {
  for (const temperature of [20, 23, 26]) {
    expect(weighed(inWater({ temperature }))).toEqual({ findings: [], met: ["restricting"] });
  }
});

test("up to 2 K outside restricts, farther blocks", () => {
  expect(inWater({ temperature: 28 }).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "water.temperature", wanted: { min: 20, max: 26 } },
      measures: { kept: { min: 20, max: 26, unit: "degC" }, planned: { value: 28, unit: "degC" } },
    },
  ]);
  expect(weighed(inWater({ temperature: 18 })).findings).toEqual(["restricting"]);
  expect(weighed(inWater({ temperature: 28.1 })).findings).toEqual(["blocking"]);
  expect(weighed(inWater({ temperature: 17.9 })).findings).toEqual(["blocking"]);
});

test("a best span in place of a kept one restricts at most", () => {
  expect(weighed(inWater({ temperature: 35 }, { standIn: true })).findings).toEqual(["restricting"]);
});

test("past a limit blocks, up to it does not", () => {
  const limit = { max: 27 };
  expect(weighed(inWater({ temperature: 27 }, { limit })).findings).toEqual(["restricting"]);
  expect(weighed(inWater({ temperature: 27.1 }, { limit })).findings).toEqual(["blocking"]);
  expect(weighed(inWater({ temperature: 27.1 }, { limit, standIn: true })).findings).toEqual(["blocking"]);
});

test("what is tolerated for a while never loosens", () => {
  expect(weighed(inWater({ temperature: 30 }, { tolerated: { min: 10, max: 32 } })).findings).toEqual([
    "blocking",
  ]);
});

describe("the hottest and the coolest day", () => {
  test("restrict however far out", () => {
    expect(inWater({ temperature: 24, hottest: 35 }).findings).toMatchObject([
      { weight: "restricting", condition: { on: "water.hottest", wanted: { max: 26 } } },
    ]);
    expect(inWater({ temperature: 24, coolest: 10 }).findings).toMatchObject([
      { weight: "restricting", condition: { on: "water.coolest", wanted: { min: 20 } } },
    ]);
  });

  test("block past a limit only", () => {
    const limit = { min: 12, max: 34 };
    expect(weighed(inWater({ temperature: 24, hottest: 34, coolest: 12 }, { limit })).findings).toEqual([
      "restricting",
      "restricting",
    ]);
    expect(weighed(inWater({ temperature: 24, hottest: 34.1 }, { limit })).findings).toEqual(["blocking"]);
    expect(weighed(inWater({ temperature: 24, coolest: 11.9 }, { limit })).findings).toEqual(["blocking"]);
  });

  test("are met within the kept span", () => {
    expect(weighed(inWater({ temperature: 24, hottest: 26, coolest: 20 }))).toEqual({
      findings: [],
      met: ["restricting", "restricting", "restricting"],
    });
  });
});

test("an unheated room of 18 °C suits a goldfish and no betta", () => {
  const water = { temperature: 18 };
  const at = (species: typeof bettaSplendens) =>
    planBy(waterTemperature, [{ species, unsexed: 1 }], { water });
  expect(at(carassiusAuratus).outcome).toBe("suitable");
  expect(at(bettaSplendens).outcome).toBe("unsuitable");
});
