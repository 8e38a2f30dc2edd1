import { expect, test } from "vitest";
import { quantities } from "../../src/report/units";

// One inch is 2.54 cm, one pound 0.45359237 kg (agreement of 1959); a US gallon is 231 cubic inches, 3.785411784 L; an
// imperial gallon 4.54609 L (Weights and Measures Act 1985).
test.each([
  ["metric", { value: 100, unit: "cm" }, "100 cm"],
  ["us", { value: 100, unit: "cm" }, "39.4 in"],
  ["imperial", { value: 100, unit: "cm" }, "39.4 in"],
  ["metric", { value: 200, unit: "L" }, "200 L"],
  ["us", { value: 200, unit: "L" }, "52.8 US gal"],
  ["imperial", { value: 200, unit: "L" }, "44 imp gal"],
  ["us", { value: 4000, unit: "cm2" }, "620 sq in"],
  ["imperial", { value: 250, unit: "kg" }, "551 lb"],
  ["us", { value: 250, unit: "kg" }, "551 lb"],
  ["us", { value: 2, unit: "m2" }, "21.5 sq ft"],
  ["metric", { min: 2, unit: "m2" }, "at least 2 m²"],
  ["metric", { value: 12.5, unit: "mg/d" }, "12.5 mg a day"],
  ["us", { min: 20, max: 25, unit: "degC" }, "68 to 77 °F"],
  ["imperial", { min: 20, max: 25, unit: "degC" }, "20 to 25 °C"],
  ["metric", { value: 0.3, unit: "1" }, "30 %"],
  ["metric", { min: 5, unit: "dH" }, "at least 5 °dH"],
  ["metric", { max: 12, unit: "dH" }, "at most 12 °dH"],
  ["metric", { min: 7, max: 7 }, "7"],
  ["metric", { value: "gentle" }, "gentle"],
] as const)("in %s units %o reads %s", (system, quantity, text) => {
  expect(quantities(system).text(quantity)).toBe(text);
});
