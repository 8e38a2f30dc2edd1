import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { contains, overlap } from "../../src/ranges";
import { runs } from "../runs";
import { partialRanges } from "./arbitrary";

test("both ends belong to the range", () => {
  const range = { min: 22, max: 26 };
  expect([21.9, 22, 24, 26, 26.1].map((number) => contains(range, number))).toEqual([
    false,
    true,
    true,
    true,
    false,
  ]);
});

test("a range lies within another if both its ends do", () => {
  expect(contains({ min: 22, max: 26 }, { min: 22, max: 26 })).toBe(true);
  expect(contains({ min: 22, max: 26 }, { min: 23, max: 25 })).toBe(true);
  expect(contains({ min: 22, max: 26 }, { min: 21, max: 25 })).toBe(false);
  expect(contains({ min: 22, max: 26 }, { min: 23, max: 27 })).toBe(false);
});

test("a one-sided range lies only in what is open on that side", () => {
  expect(contains({ min: 22 }, { min: 23 })).toBe(true);
  expect(contains({ min: 22 }, { min: 23, max: 99 })).toBe(true);
  expect(contains({ min: 22, max: 26 }, { min: 23 })).toBe(false);
  expect(contains({ max: 26 }, { min: 23 })).toBe(false);
});

test("a range lies within another if and only if it is all they share", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, (outer, inner) => {
      const shared = overlap(outer, inner);
      expect(contains(outer, inner)).toBe(JSON.stringify(shared) === JSON.stringify(inner));
    }),
    { numRuns: runs(1_000) },
  );
});

test.each([Number.NaN, Infinity, -Infinity])("%d is no number to look for", (number) => {
  expect(() => contains({ min: 22 }, number)).toThrow(InvalidInputError);
});
