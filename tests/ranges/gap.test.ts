import fc from "fast-check";
import { expect, test } from "vitest";
import { contains, gap } from "../../src/ranges";
import { runs } from "../runs";
import { ends, partialRanges } from "./arbitrary";

test("the gap runs from the lower range to the higher", () => {
  expect(gap({ min: 16, max: 22 }, { min: 24, max: 28 })).toStrictEqual({ min: 22, max: 24 });
  expect(gap({ min: 24, max: 28 }, { min: 16, max: 22 })).toStrictEqual({ min: 22, max: 24 });
  expect(gap({ max: 6.5 }, { min: 7.5 })).toStrictEqual({ min: 6.5, max: 7.5 });
});

test("ranges that touch or overlap leave none", () => {
  expect(gap({ min: 16, max: 24 }, { min: 24, max: 28 })).toBeUndefined();
  expect(gap({ min: 16, max: 26 }, { min: 24, max: 28 })).toBeUndefined();
  expect(gap({ min: 16 }, { min: 24, max: 28 })).toBeUndefined();
});

test("it is the same from either side", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, (a, b) => {
      expect(gap(a, b)).toStrictEqual(gap(b, a));
    }),
  );
});

test("each range holds one end of the gap, and neither holds what lies inside", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, ends, (a, b, number) => {
      const between = gap(a, b);
      fc.pre(between !== undefined);
      const { min, max } = between;
      expect([contains(a, min), contains(b, min)].filter(Boolean)).toHaveLength(1);
      expect([contains(a, max), contains(b, max)].filter(Boolean)).toHaveLength(1);
      if (number > min && number < max) {
        expect(contains(a, number) || contains(b, number)).toBe(false);
      }
    }),
    { numRuns: runs(1_000) },
  );
});
