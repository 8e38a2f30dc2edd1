import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import { gap, limitingPair, overlap } from "../../../src/ranges";
import { runs } from "../../runs";
import { partialRanges } from "../arbitrary";

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

test("of things that have ranges, by what gives the range", () => {
  const fishes = ranges.map((temperature) => ({ temperature }));
  expect(limitingPair(fishes, (fish) => fish.temperature)).toStrictEqual(limitingPair(ranges));
});

test("a thing without a range is refused, with its place", () => {
  const fishes: { temperature?: { min: number } }[] = [{ temperature: { min: 20 } }, {}];
  // @ts-expect-error: the range may be absent
  expect(() => limitingPair(fishes, (fish) => fish.temperature)).toThrow(/^items\[1\]: /);
  // @ts-expect-error: no function
  expect(() => limitingPair(fishes, "temperature")).toThrow(
    /^rangeOf: expected a function, found "temperature"/,
  );
});

test("a hole in the list is no range", () => {
  const sparse = [{ min: 20, max: 26 }];
  sparse[2] = { min: 22, max: 24 };
  expect(() => limitingPair(sparse)).toThrow(/^items\[1\]: /);
});

test("a million ranges are as good as three", () => {
  const many = Array.from({ length: 1_000_000 }, (_, index) => ({ min: index, max: 2_000_000 - index }));
  expect(limitingPair(many)).toEqual({
    largestMin: 999_999,
    smallestMax: 999_999,
    shared: { min: 999_999, max: 1_000_001 },
  });
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
    { numRuns: runs(1_000) },
  );
});
