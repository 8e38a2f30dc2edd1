import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { width } from "../../src/ranges";
import { ends } from "./arbitrary";

test("the width is max less min, and a one-sided range has none", () => {
  expect(width({ min: 22, max: 26 })).toBe(4);
  expect(width({ min: -2, max: 2 })).toBe(4);
  expect(width({ min: 22, max: 22 })).toBe(0);
  expect(width({ min: 22 })).toBeUndefined();
  expect(width({ max: 22 })).toBeUndefined();
});

test("a width beyond the greatest number is refused", () => {
  expect(() => width({ min: -1e308, max: 1e308 })).toThrow(InvalidInputError);
  expect(width({ min: -8e307, max: 8e307 })).toBe(1.6e308);
});

test("shifting a range leaves its width", () => {
  fc.assert(
    fc.property(ends, fc.nat(100), ends, (min, size, shift) => {
      expect(width({ min: min + shift, max: min + size + shift })).toBe(size);
    }),
  );
});
