import { expect, test } from "vitest";
import { english, type UnitSystem } from "../../src/report";
import { quantityWriter } from "../../src/report/quantities";

const write = (system: UnitSystem, language = "en") => quantityWriter({ ...english, language }, system);

// One inch is 2.54 cm, one pound 0.45359237 kg (agreement of 1959); a US gallon is 231 cubic inches, 3.785411784 L; an
// imperial gallon 4.54609 L (Weights and Measures Act 1985). A German degree of hardness is 10 mg/L of CaO, so 17.848 ppm of
// CaCO3 (molar masses 56.0774 and 100.0872).
test.each([
  ["metric", { value: 100, unit: "cm" }, "100 cm"],
  ["us", { value: 100, unit: "cm" }, "39 in"],
  ["imperial", { value: 100, unit: "cm" }, "39 in"],
  ["metric", { value: 200, unit: "L" }, "200 L"],
  ["us", { value: 20, unit: "cm" }, "7.9 in"],
  ["us", { value: 200, unit: "L" }, "53 US gal"],
  ["us", { value: 2, unit: "L" }, "0.5 US gal"],
  ["metric", { value: 73.4, unit: "L" }, "73 L"],
  ["metric", { value: 3590, unit: "kg" }, "3,600 kg"],
  ["metric", { min: 1249, unit: "kg" }, "at least 1,300 kg"],
  ["imperial", { value: 200, unit: "L" }, "44 imp gal"],
  ["metric", { value: -0.02, unit: "degC" }, "0 °C"],
  ["metric", { max: -0.02, unit: "degC" }, "at most -0.1 °C"],
  ["metric", { min: -0.02, unit: "degC" }, "at least 0 °C"],
  ["metric", { value: -2, unit: "degC" }, "-2 °C"],
  ["metric", { value: 4000, unit: "cm2" }, "4,000 cm²"],
  ["us", { value: 4000, unit: "cm2" }, "620 sq in"],
  ["us", { min: 80, unit: "cm" }, "at least 32 in"],
  ["us", { min: 10, unit: "cm" }, "at least 4 in"],
  ["us", { max: 10, unit: "cm" }, "at most 3.9 in"],
  ["us", { max: 31, unit: "degC" }, "at most 87 °F"],
  ["us", { max: 10, unit: "dH" }, "at most 170 ppm"],
  ["metric", { max: 31, unit: "degC" }, "at most 31 °C"],
  ["metric", { min: 80, unit: "cm" }, "at least 80 cm"],
  ["us", { min: 22, unit: "degC" }, "at least 72 °F"],
  ["us", { min: 120, by: 50, unit: "cm" }, "48 × 20 in"],
  ["us", { value: 120, by: 45, unit: "cm" }, "47 × 18 in"],
  ["metric", { min: 110.2, by: 50, unit: "cm" }, "111 × 50 cm"],
  ["metric", { min: 9900, unit: "cm2" }, "at least 9,900 cm²"],
  ["metric", { min: 10_000, unit: "cm2" }, "at least 1 m²"],
  ["metric", { value: 12_600, unit: "cm2" }, "1.26 m²"],
  ["metric", { min: 8000, max: 180_000, unit: "cm2" }, "0.8 to 18 m²"],
  ["imperial", { value: 12_600, unit: "cm2" }, "13.6 sq ft"],
  ["imperial", { value: 250, unit: "kg" }, "550 lb"],
  ["us", { value: 250, unit: "kg" }, "550 lb"],
  ["us", { value: 2, unit: "m2" }, "21.5 sq ft"],
  ["metric", { min: 2, unit: "m2" }, "at least 2 m²"],
  ["us", { min: 20, max: 25, unit: "degC" }, "68 to 77 °F"],
  ["us", { max: 28, unit: "degC" }, "at most 82 °F"],
  ["imperial", { min: 20, max: 25, unit: "degC" }, "20 to 25 °C"],
  ["metric", { value: 0.3, unit: "1" }, "30 %"],
  ["metric", { min: 5, unit: "dH" }, "at least 5 °dH"],
  ["metric", { max: 12, unit: "dH" }, "at most 12 °dH"],
  ["us", { min: 5, max: 12, unit: "dH" }, "89 to 210 ppm"],
  ["us", { min: 5, unit: "dH" }, "at least 90 ppm"],
  ["imperial", { value: 0, unit: "dH" }, "0 ppm"],
  ["imperial", { max: 20, unit: "dH" }, "at most 350 ppm"],
  ["metric", { min: 7.25, max: 7.75, within: true }, "7.3 to 7.7"],
  ["metric", { min: 7.25, max: 7.75 }, "7.3 to 7.8"],
  ["us", { min: 22, max: 26, unit: "degC", within: true }, "72 to 78 °F"],
  ["us", { min: 24, max: 24.4, unit: "degC", within: true }, "75.2 to 75.9 °F"],
  ["metric", { min: 7.26, max: 7.28, within: true }, "7.26 to 7.28"],
  ["metric", { min: 7.262, max: 7.264, within: true }, "7.3"],
  ["metric", { max: 7.75, within: true }, "at most 7.7"],
  ["us", { min: 7, max: 7, unit: "dH", within: true }, "125 ppm"],
  ["us", { value: 35.9, unit: "degC", down: true }, "96 °F"],
  ["us", { value: 35.9, unit: "degC", up: true }, "97 °F"],
  ["us", { value: 80, unit: "cm", up: true }, "32 in"],
  ["imperial", { value: 1, unit: "L", up: true }, "0.3 imp gal"],
  ["us", { value: 2, unit: "L", up: true }, "0.6 US gal"],
  ["us", { value: 4000, unit: "cm2", up: true }, "621 sq in"],
  ["us", { value: 16_800, unit: "cm2", up: true }, "18.1 sq ft"],
  ["metric", { value: 0.3, unit: "1", up: true }, "30 %"],
  ["metric", { value: 85, unit: "cm", up: true }, "85 cm"],
  ["metric", { value: 1, unit: "h" }, "1 hour"],
  ["metric", { value: 1.4, unit: "h" }, "1.4 hours"],
  ["metric", { min: 1, unit: "a" }, "at least 1 year"],
  ["metric", { max: 1, unit: "d" }, "at most 1 day"],
  ["metric", { min: 1, max: 3, unit: "mo" }, "1 to 3 months"],
  ["metric", { min: 7, max: 7 }, "7"],
  ["metric", { min: 4.52, max: 4.54, unit: "cm" }, "4.5 cm"],
  ["metric", { value: 0 }, "0"],
  ["metric", {}, ""],
  ["metric", undefined, ""],
  ["us", { value: 3, unit: "furlong" }, "3 furlong"],
  ["us", { value: 3, unit: "constructor" }, "3 constructor"],
] as const)("in %s units %o reads %s", (system, quantity, text) => {
  expect(write(system)(quantity)).toBe(text);
});

test("numbers are written as the language has them", () => {
  expect(write("metric", "de")({ value: 1234.5, unit: "L" })).toBe("1.235 L");
  expect(write("metric", "de")({ value: 6.5 })).toBe("6,5");
});

test.each(["cubits", "toString", "__proto__", undefined, 7])("%s is no system of units", (system) => {
  expect(() => Reflect.apply(quantityWriter, undefined, [english, system])).toThrow(
    expect.objectContaining({
      problems: [expect.objectContaining({ path: ["options", "units"], code: "word", found: system })],
    }),
  );
});

// 23 °C are 73.4 °F, 22.9 °C 73.22 °F; a German degree of hardness is 17.848 ppm of CaCO3.
test.each([
  ["us", { min: 23, max: 28, unit: "degC" }, { value: 22.9, unit: "degC" }, "73.4 to 82.4 °F"],
  ["us", { value: 22.9, unit: "degC" }, { min: 23, max: 28, unit: "degC" }, "73.2 °F"],
  ["us", { value: 20, unit: "degC" }, { min: 23, max: 28, unit: "degC" }, "68 °F"],
  ["us", { value: 23, unit: "degC" }, { min: 23, max: 28, unit: "degC" }, "73 °F"],
  ["metric", { value: 22.9, unit: "degC" }, { min: 23, max: 28, unit: "degC" }, "22.9 °C"],
  ["us", { value: 11.9, unit: "dH" }, { max: 12, unit: "dH" }, "212 ppm"],
  ["metric", { min: 3.12, unit: "cm" }, { min: 3.18, unit: "cm" }, "at least 3.12 cm"],
  ["metric", { value: 12.31, unit: "cm" }, { value: 12.34, unit: "cm" }, "12.31 cm"],
  ["metric", { value: 112.1, unit: "cm" }, { value: 112.4, unit: "cm" }, "112.1 cm"],
  ["metric", { value: 10_100, unit: "cm2" }, { value: 10_140, unit: "cm2" }, "1.01 m²"],
  ["metric", { min: 80_000, unit: "cm2" }, { value: 2400, unit: "cm2" }, "at least 8 m²"],
  ["metric", { value: 2400, unit: "cm2" }, { min: 80_000, unit: "cm2" }, "0.24 m²"],
  ["metric", { value: 9900, unit: "cm2" }, { value: 9950, unit: "cm2" }, "9,900 cm²"],
  ["us", { value: 2400, unit: "cm2" }, { min: 80_000, unit: "cm2" }, "2.58 sq ft"],
  ["metric", { min: 23.341, unit: "degC" }, { value: 23.34, unit: "degC" }, "at least 23.4 °C"],
] as const)("in %s units %o beside %o is told apart: %s", (system, figure, other, text) => {
  expect(write(system)(figure, other)).toBe(text);
});
