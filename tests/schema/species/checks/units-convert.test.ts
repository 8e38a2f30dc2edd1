import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const trade = "common-practice";
const warm = { by: trade, value: { min: 20, max: 25 }, as: "kept" };
const long = { by: trade, value: 4, as: "usual", measure: "TL" };

test("the source's unit may be any of the same measure", () => {
  expect(problemsWith({ size: { adultLength: [{ ...long, unit: "in" }] } })).toStrictEqual([]);
  expect(problemsWith({ size: { adultLength: [{ ...long, unit: "cm" }] } })).toStrictEqual([]);
});

test.each(["cm", "F", "°C", "degc", "", "toString", "__proto__"])("%o is no unit of temperature", (unit) => {
  expect(problemsWith({ water: { temperature: [{ ...warm, unit }] } })).toContainEqual([
    "water.temperature[0].unit",
    expect.stringMatching(/^one of degC, degF, K$|at least 1 character/),
  ]);
});

test("a trait without a unit takes none", () => {
  expect(
    problemsWith({ water: { pH: [{ by: trade, value: { max: 7 }, as: "kept", unit: "g/kg" }] } }),
  ).toStrictEqual([["water.pH[0].unit", "no such field here"]]);
});

test("a unit that cannot be read leaves the other checks standing", () => {
  const temperature = [
    { ...warm, unit: "F" },
    { by: trade, value: { min: 70 }, as: "limit" },
  ];
  expect(problemsWith({ water: { temperature } }).map(([path]) => path)).toStrictEqual([
    "water.temperature[0].unit",
    "water.temperature[1].value.min",
  ]);
});

test("a unit is one of the trait's, where there is no figure to convert too", () => {
  const eats = [{ by: trade, value: { prey: "egg" }, unit: "adult" }];
  expect(problemsWith({ predation: { eats } }).map(([path]) => path)).toStrictEqual([
    "predation.eats[0].unit",
  ]);
});
