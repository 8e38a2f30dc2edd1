import { describe, expect, test } from "vitest";
import { figure, numberIn, plainFigure } from "../../../docs/example-app/texts/numbers";

describe("a number is read as the language writes it", () => {
  test.each([
    ["1.000", "de", 1000],
    ["1.234.567,5", "de", 1234567.5],
    ["1,000", "en-GB", 1000],
    ["1,234,567.5", "en-GB", 1234567.5],
    ["1,000", "de", 1],
    ["1.000", "en-GB", 1],
    ["0.500", "de", 0.5],
    ["-3", "de", -3],
    ["−3", "en-GB", -3],
    [",5", "de", 0.5],
    ["6,", "de", 6],
  ])("%s in %s is %d", (typed, language, number) => {
    expect(numberIn(typed, language)).toBe(number);
  });

  test.each([
    ["6.8", "de", 6.8],
    ["31,5", "en-GB", 31.5],
    ["25.75", "de", 25.75],
  ])(
    "a point or comma that parts no thousands is a decimal sign: %s in %s is %d",
    (typed, language, number) => {
      expect(numberIn(typed, language)).toBe(number);
    },
  );

  test.each([
    ["warm", "en-GB"],
    ["1,000.5", "de"],
    ["1.000,5", "en-GB"],
    ["1.00.000", "de"],
    ["1e3", "en-GB"],
    ["0x10", "en-GB"],
    [".", "en-GB"],
    ["9".repeat(400), "en-GB"],
  ])("what could mean two things, or nothing, is no number: %s in %s", (typed, language) => {
    expect(numberIn(typed, language)).toBeUndefined();
  });
});

test("what a field shows is read as the same number", () => {
  for (const language of ["de", "en-GB"]) {
    for (const number of [0, 0.25, 6.8, 1000, 12345.67, -1.5]) {
      expect(numberIn(plainFigure(number, language), language)).toBe(number);
      expect(numberIn(figure(number, language), language)).toBe(number);
    }
  }
});
