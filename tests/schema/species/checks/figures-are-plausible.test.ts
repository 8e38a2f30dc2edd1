import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const trade = "common-practice";

test("78 is no temperature for a fish in °C, but one in °F", () => {
  const said = { by: trade, value: { min: 68, max: 78 }, as: "kept" };
  expect(problemsWith({ water: { temperature: [said] } })).toStrictEqual([
    ["water.temperature[0].value.min", "-2 to 48 degC"],
    ["water.temperature[0].value.max", "-2 to 48 degC"],
  ]);
  expect(problemsWith({ water: { temperature: [{ ...said, unit: "degF" }] } })).toStrictEqual([]);
});

test.each([
  ["a length in mm", { size: { adultLength: [{ by: trade, value: 400, as: "usual", measure: "TL" }] } }],
  ["a tank in mm", { space: { baseLength: [{ by: trade, value: { least: 6000, for: 6 } }] } }],
  ["a floor in m²", { space: { footprint: [{ by: trade, value: { least: 0.36, for: 6 } }] } }],
  ["a lifespan in days", { size: { lifespan: [{ by: trade, value: 1200 }] } }],
  ["a hardness in mg/L", { water: { generalHardness: [{ by: trade, value: { max: 180 }, as: "kept" }] } }],
  [
    "a territory in m²",
    { space: { territory: [{ by: trade, value: { area: 0.2, zone: "bottom", holder: "pair" } }] } },
  ],
  ["weights in mg", { size: { lengthWeight: [{ by: trade, value: { a: 12, b: 3 } }] } }],
  [
    "weights that grow with the square",
    { size: { lengthWeight: [{ by: trade, value: { a: 0.01, b: 1.9 } }] } },
  ],
  ["prey in metres", { predation: { eats: [{ by: trade, value: { prey: "fish", greatest: 0.04 } }] } }],
  ["a pH with a slipped point", { water: { pH: [{ by: trade, value: { min: 65, max: 75 }, as: "kept" }] } }],
])("%s shows", (_, fields) => {
  expect(problemsWith(fields)).not.toStrictEqual([]);
});

test("the number of animals a size is stated for is no size", () => {
  expect(
    problemsWith({ space: { baseLength: [{ by: trade, value: { least: 200, for: 4000 } }] } }),
  ).toStrictEqual([]);
});

test("what is set aside may be as wild as the source that said it", () => {
  const slip = { by: trade, value: { max: 78 }, as: "kept", setAside: "Meant in °F." };
  expect(problemsWith({ water: { temperature: [slip] } })).toStrictEqual([]);
});

test("a share is told once where it is above one, and without a unit where it is too small", () => {
  const share = (value: number) => problemsWith({ size: { bodyDepthShare: [{ by: trade, value }] } });
  expect(share(24.6)).toStrictEqual([["size.bodyDepthShare[0].value", "at most 1"]]);
  expect(share(0.002)).toStrictEqual([["size.bodyDepthShare[0].value", "0.02 to 1"]]);
});
