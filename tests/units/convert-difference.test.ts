import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { convert, convertDifference, type Unit } from "../../src/units";
import { runs } from "../runs";
import { convertiblePairs, everyUnit } from "./every-unit";

/** Of either sign or zero, and far from where doubles lose their digits. */
const values = fc
  .tuple(fc.constantFrom(-1, 0, 1), fc.double({ min: 1e-9, max: 1e9, noNaN: true }))
  .map(([sign, size]) => sign * size);
const pairs = fc.constantFrom(...convertiblePairs);

test.each([
  // From the scales themselves: 100 °C to 0 °C is 212 °F to 32 °F, and a degree Celsius is a kelvin.
  [100, "degC", "degF", 180],
  [180, "degF", "degC", 100],
  [180, "degF", "K", 100],
  [100, "K", "degF", 180],
  [7, "degC", "K", 7],
  [7, "K", "degC", 7],
  [0, "degF", "degC", 0],
] satisfies [number, Unit, Unit, number][])(
  "%d %s is a difference in %s of %d",
  (value, from, to, expected) => {
    expect(convertDifference<Unit>(value, from, to)).toBe(expected);
  },
);

test("it is the difference of the converted amounts", () => {
  fc.assert(
    fc.property(values, values, pairs, (a, b, { from, to }) => {
      const difference = convertDifference(b - a, from, to);
      const amounts = [convert(a, from, to), convert(b, from, to)] as const;
      const largest = Math.max(Math.abs(amounts[0]), Math.abs(amounts[1]), 500);
      expect(Math.abs(difference - (amounts[1] - amounts[0]))).toBeLessThanOrEqual(1e-12 * largest);
    }),
    { numRuns: runs(2_000) },
  );
});

test("two differences add up", () => {
  fc.assert(
    fc.property(values, values, pairs, (a, b, { from, to }) => {
      const parts = [convertDifference(a, from, to), convertDifference(b, from, to)] as const;
      const scale = Math.max(Math.abs(parts[0]), Math.abs(parts[1]));
      const whole = convertDifference(a + b, from, to);
      expect(Math.abs(whole - (parts[0] + parts[1]))).toBeLessThanOrEqual(1e-12 * scale);
    }),
    { numRuns: runs(2_000) },
  );
});

test("there and back returns the difference", () => {
  fc.assert(
    fc.property(values, pairs, (value, { from, to }) => {
      const back = convertDifference(convertDifference(value, from, to), to, from);
      expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
    }),
    { numRuns: runs(2_000) },
  );
});

test("outside temperature it is the same as convert", () => {
  const others = convertiblePairs.filter(({ from }) => !everyUnit.temperature.includes(from));
  fc.assert(
    fc.property(values, fc.constantFrom(...others), (value, { from, to }) => {
      expect(convertDifference(value, from, to)).toBe(convert(value, from, to));
    }),
  );
});

test("what convert rejects, it rejects", () => {
  expect(() => convertDifference(Number.NaN, "degC", "degF")).toThrow(InvalidInputError);
  expect(() => convertDifference(1, "degC", "cm" as "degF")).toThrow(InvalidInputError);
  expect(() => convertDifference(1, "constructor" as "degC", "degF")).toThrow(InvalidInputError);
});
