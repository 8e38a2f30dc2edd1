import { describe, expect, test } from "vitest";
import { keptWaterIsPlausible } from "../../../data/checks/kept-water-is-plausible";
import type { TraitStatement } from "../../../src/species";
import { foundBy } from "./found";

type Temperature = TraitStatement<"water.temperature">;

const found = (...temperature: Temperature[]) => foundBy(keptWaterIsPlausible, { water: { temperature } });
const record = "data/species/danio-rerio.json";
const line = (min: number, max: number, rest: Partial<Temperature> = {}): Temperature => ({
  by: "common-practice",
  value: { min, max },
  as: "kept",
  ...rest,
});

describe("water that no fish of a heated tank is kept in", () => {
  test.each([
    [2.4, 28, "2.4 degC, at which few animals are kept"],
    [4, 28, "4 degC, at which few animals are kept"],
    [24, 38, "38 degC, at which few animals are kept"],
  ])("%d to %d °C is told", async (min, max, problem) => {
    expect(await found(line(min, max))).toStrictEqual([`${record}: water.temperature: ${problem}`]);
  });

  test("is told once though the span is too wide as well", async () => {
    expect(await found(line(2, 45))).toHaveLength(1);
  });

  test("is left alone where a note says why, or where the line is set aside", async () => {
    expect(await found(line(4, 24, { note: "It winters in ponds." }))).toStrictEqual([]);
    expect(await found(line(4, 28, { setAside: "Of another species." }))).toStrictEqual([]);
  });

  test("is read in the unit of the source", async () => {
    expect(await found(line(75, 82, { unit: "degF" }))).toStrictEqual([]);
    expect(await found(line(39, 82, { unit: "degF" }))).toHaveLength(1);
  });

  test("is no matter of what an animal bears, or was tested in", async () => {
    expect(await found(line(4, 38, { as: "tolerated" }), line(4, 38, { as: "wild" }))).toStrictEqual([]);
  });
});

test("a kept span that is wider than that of other animals says why", async () => {
  expect(await found(line(12, 28))).toStrictEqual([
    `${record}: water.temperature: a span of 16 degC, from 12 to 28`,
  ]);
  expect(await found(line(12, 27))).toStrictEqual([]);
  expect(await found({ by: "common-practice", value: { min: 12 }, as: "kept" })).toStrictEqual([]);
});

test.each([
  ["water.pH", "pH", { min: 3.5, max: 7 }, "3.5, at which few animals are kept"],
  ["water.pH", "pH", { min: 6.5, max: 10 }, "10, at which few animals are kept"],
  ["water.pH", "pH", { min: 5, max: 8.5 }, "a span of 3.5, from 5 to 8.5"],
  ["water.generalHardness", "generalHardness", { min: 2, max: 30 }, "a span of 28 dH, from 2 to 30"],
  [
    "water.carbonateHardness",
    "carbonateHardness",
    { min: 3, max: 30 },
    "30 dH, at which few animals are kept",
  ],
] as const)("a slip in %s is told", async (trait, name, value, problem) => {
  const water = { [name]: [{ by: "common-practice", value, as: "kept" }] };
  expect(await foundBy(keptWaterIsPlausible, { water })).toStrictEqual([`${record}: ${trait}: ${problem}`]);
});

test("a kept span has something in common with another one, or says why not", async () => {
  expect(await found(line(24, 28), line(15, 19))).toStrictEqual([
    `${record}: water.temperature: 24 to 28 degC, with nothing in common with any other line`,
    `${record}: water.temperature: 15 to 19 degC, with nothing in common with any other line`,
  ]);
  expect(await found(line(24, 28), line(15, 19, { note: "In unheated tanks." }))).toHaveLength(1);
  expect(await found(line(24, 28), line(15, 19), line(18, 26))).toStrictEqual([]);
  expect(await found(line(24, 28), line(30, 31, { as: "wild" }))).toStrictEqual([]);
  expect(await found(line(24, 28), line(15, 19, { setAside: "Of another species." }))).toStrictEqual([]);
  expect(await found(line(24, 28), line(15, 19, { stage: "egg" }))).toHaveLength(0);
});

test("a form is looked at by itself", async () => {
  const forms = { veil: { names: { en: ["veil danio"] }, water: { temperature: [line(4, 28)] } } };
  expect(await foundBy(keptWaterIsPlausible, { forms, water: { temperature: [line(24, 28)] } })).toHaveLength(
    1,
  );
});
