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

describe("each end gives way", () => {
  test("by half a degree, which is worth knowing", () => {
    for (const temperature of [19.5, 26.5]) {
      expect(inWater({ temperature })).toMatchObject({
        outcome: "suitable",
        findings: [
          {
            weight: "advisory",
            measures: { kept: { min: 20, max: 26, unit: "degC" }, planned: { value: temperature } },
          },
        ],
        met: [{ weight: "restricting" }],
      });
    }
  });

  test("by a degree where it is a handbook's class", () => {
    const precision = { max: "class" } as const;
    expect(inWater({ temperature: 27 }, { precision }).outcome).toBe("suitable");
    expect(inWater({ temperature: 27.1 }, { precision }).outcome).toBe("conditional");
    expect(inWater({ temperature: 19.4 }, { precision }).outcome).toBe("conditional");
  });

  test("by nothing past a limit, however near that is", () => {
    expect(inWater({ temperature: 26.2 }, { limit: { max: 26.2 } }).outcome).toBe("suitable");
    expect(inWater({ temperature: 26.3 }, { limit: { max: 26.2 } }).outcome).toBe("conditional");
  });
});

test("outside that it restricts however far out, to what the animal can be given, aimed at what it is kept in", () => {
  for (const temperature of [10, 19.4, 26.6, 40]) {
    expect(inWater({ temperature })).toMatchObject({
      findings: [
        {
          weight: "restricting",
          condition: {
            on: "water.temperature",
            wanted: { min: 19.5, max: 26.5, unit: "degC" },
            aim: { min: 20, max: 26 },
          },
          measures: { planned: { value: temperature, unit: "degC" } },
        },
      ],
      conditions: [{ on: "water.temperature", aim: { min: 20, max: 26 } }],
    });
  }
});

test("past a limit it says so", () => {
  const limit = { max: 27 };
  const said = (temperature: number) => inWater({ temperature }, { limit }).findings[0]?.measures;
  expect(said(27)).not.toHaveProperty("limit");
  expect(said(27.1)).toMatchObject({ limit: { max: 27, unit: "degC" } });
});

test("water outside an optimum is worth knowing", () => {
  const optimum = { min: 22, max: 24 };
  expect(inWater({ temperature: 25 }, { optimum })).toMatchObject({
    outcome: "suitable",
    findings: [{ weight: "advisory", measures: { optimum: { min: 22, max: 24 } } }],
  });
  expect(inWater({ temperature: 24 }, { optimum }).findings).toEqual([]);
});

test("what is tolerated for a while never loosens", () => {
  const tolerated = { min: 10, max: 32 };
  expect(inWater({ temperature: 30 }, { tolerated }).conditions).toEqual(
    inWater({ temperature: 30 }).conditions,
  );
});

test("a plan that does not say is held to it in both bounds", () => {
  expect(inWater({ temperature: undefined })).toMatchObject({
    outcome: "conditional",
    bounds: { atBest: "conditional", atWorst: "conditional" },
    open: [{ on: "water.temperature", reason: "not-given" }],
  });
});

describe("the hottest and the coolest day", () => {
  test("restrict to the one end each, however far out", () => {
    expect(inWater({ temperature: 24, hottest: 35 }).findings).toMatchObject([
      { weight: "restricting", condition: { on: "water.hottest", wanted: { max: 28 } } },
    ]);
    expect(inWater({ temperature: 24, coolest: 10 }).findings).toMatchObject([
      { weight: "restricting", condition: { on: "water.coolest", wanted: { min: 19 } } },
    ]);
  });

  test("tell the figure that is asked for, which is not what the animal is kept in for good", () => {
    const { findings, conditions } = inWater({ temperature: 24, hottest: 28.1, coolest: 18.9 });
    expect(findings).toMatchObject([
      { measures: { kept: { max: 28 } } },
      { measures: { kept: { min: 19 } } },
    ]);
    expect(conditions.map(({ wanted, aim }) => [wanted, aim])).toEqual([
      [{ max: 28, unit: "degC" }, undefined],
      [{ min: 19, unit: "degC" }, undefined],
    ]);
  });

  test("go to what is tolerated for a while, where that is known", () => {
    const tolerated = { min: 17, max: 27 };
    const inSeason = (hottest: number, coolest: number) =>
      inWater({ temperature: 24, hottest, coolest }, { tolerated }).outcome;
    expect(inSeason(27, 17)).toBe("suitable");
    expect(inSeason(27.1, 17)).toBe("conditional");
    expect(inSeason(27, 16.9)).toBe("conditional");
  });

  test("never go past a limit", () => {
    const hottest = (figure: number) =>
      inWater({ temperature: 24, hottest: figure }, { limit: { max: 27 } }).outcome;
    expect([hottest(27), hottest(27.1)]).toEqual(["suitable", "conditional"]);
  });

  test("say what limit they pass", () => {
    const limit = { min: 12, max: 34 };
    const { findings } = inWater({ temperature: 24, hottest: 34.1, coolest: 11.9 }, { limit });
    expect(findings).toMatchObject([
      { measures: { hottest: { value: 34.1 }, limit: { max: 34 } } },
      { measures: { coolest: { value: 11.9 }, limit: { min: 12 } } },
    ]);
  });

  test("are met within what the animal bears for a while, which is worth knowing", () => {
    expect(weighed(inWater({ temperature: 24, hottest: 26, coolest: 20 }))).toEqual({
      findings: [],
      met: ["restricting", "restricting", "restricting"],
    });
    expect(weighed(inWater({ temperature: 24, hottest: 28, coolest: 19 })).findings).toEqual([
      "advisory",
      "advisory",
    ]);
  });
});

test("an unheated room of 18 °C suits a goldfish, and a betta must have it warmer", () => {
  const water = { temperature: 18 };
  const at = (species: typeof bettaSplendens) =>
    planBy(waterTemperature, [{ species, unsexed: 1 }], { water });
  expect(at(carassiusAuratus).outcome).toBe("suitable");
  expect(at(bettaSplendens)).toMatchObject({
    outcome: "conditional",
    conditions: [{ on: "water.temperature" }],
  });
});
