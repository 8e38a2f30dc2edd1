import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { gap, limitingPair, overlap } from "../../src/ranges";
import { partialRanges } from "./arbitrary";

const ranges = [
  { min: 22, max: 28 },
  { min: 18, max: 24 },
  { min: 20, max: 26 },
];

test("the largest min and the smallest max limit what all share", () => {
  expect(limitingPair(ranges)).toStrictEqual({ largestMin: 0, smallestMax: 1, shared: { min: 22, max: 24 } });
});

test("where they do not meet, the gap between them", () => {
  expect(limitingPair([...ranges, { max: 20 }])).toStrictEqual({
    largestMin: 0,
    smallestMax: 3,
    gap: { min: 20, max: 22 },
  });
});

test("of equals, the first; and a range that lies in all others limits alone", () => {
  expect(limitingPair([...ranges, ...ranges])).toMatchObject({ largestMin: 0, smallestMax: 1 });
  expect(limitingPair([...ranges, { min: 23, max: 23.5 }])).toStrictEqual({
    largestMin: 3,
    smallestMax: 3,
    shared: { min: 23, max: 23.5 },
  });
});

test("without a min or without a max, no two limit each other", () => {
  expect(limitingPair([{ min: 20 }, { min: 22 }])).toBeUndefined();
  expect(limitingPair([{ max: 20 }, { max: 22 }])).toBeUndefined();
  expect(limitingPair([{ max: 22 }, { min: 20 }])).toStrictEqual({
    largestMin: 1,
    smallestMax: 0,
    shared: { min: 20, max: 22 },
  });
});

test("of no ranges there is no pair", () => {
  expect(() => limitingPair([])).toThrow(InvalidInputError);
});

test("the pair alone shares, or misses, what all share or miss", () => {
  fc.assert(
    fc.property(fc.array(partialRanges, { minLength: 3, maxLength: 8 }), ([first, second, ...others]) => {
      if (!first || !second) throw new Error("three ranges expected");
      const all = [first, second, ...others];
      const pair = limitingPair(all);
      fc.pre(pair !== undefined);
      const [a, b] = [all[pair.largestMin], all[pair.smallestMax]];
      if (!a || !b) throw new Error("an index outside the list");
      expect(pair.shared).toStrictEqual(overlap(first, second, ...others));
      expect(pair.gap).toStrictEqual(gap(a, b));
      expect(pair.gap === undefined).toBe(pair.shared !== undefined);
    }),
    { numRuns: 1_000 },
  );
});
