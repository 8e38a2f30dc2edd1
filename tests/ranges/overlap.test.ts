import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { contains, gap, overlap } from "../../src/ranges";
import { runs } from "../runs";
import { ends, partialRanges, ranges } from "./arbitrary";

test("two ranges share what lies in both", () => {
  expect(overlap({ min: 20, max: 26 }, { min: 24, max: 30 })).toStrictEqual({ min: 24, max: 26 });
  expect(overlap({ min: 20, max: 30 }, { min: 24, max: 26 })).toStrictEqual({ min: 24, max: 26 });
  expect(overlap({ min: 20, max: 22 }, { min: 24, max: 26 })).toBeUndefined();
});

test("touching ranges share a range of zero width", () => {
  expect(overlap({ min: 20, max: 24 }, { min: 24, max: 26 })).toStrictEqual({ min: 24, max: 24 });
});

test("an absent end bounds nothing, and stays absent where nobody states it", () => {
  expect(overlap({ min: 20 }, { min: 22, max: 26 })).toStrictEqual({ min: 22, max: 26 });
  expect(overlap({ min: 20 }, { max: 26 })).toStrictEqual({ min: 20, max: 26 });
  expect(overlap({ min: 20 }, { min: 22 })).toStrictEqual({ min: 22 });
  expect(overlap({ max: 20, min: undefined }, { max: 22 })).toStrictEqual({ max: 20 });
  expect(overlap({ min: 27 }, { max: 26 })).toBeUndefined();
});

test("many ranges share what lies in all", () => {
  expect(
    overlap({ min: 20, max: 28 }, { min: 22, max: 30 }, { min: 18, max: 25 }, { min: 24 }),
  ).toStrictEqual({
    min: 24,
    max: 25,
  });
});

test("as many as JavaScript takes arguments", () => {
  const many = Array.from({ length: 50_000 }, (_, index) => ({ min: index, max: 100_000 }));
  expect(overlap({ min: 7 }, { max: 60_000 }, ...many)).toStrictEqual({ min: 49_999, max: 60_000 });
});

test("of nothing there is no overlap to name", () => {
  expect(() => Reflect.apply(overlap, undefined, [])).toThrow(InvalidInputError);
});

test("a number lies in the overlap if and only if it lies in every range", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, partialRanges, ends, (a, b, c, number) => {
      const shared = overlap(a, b, c);
      const inAll = [a, b, c].every((range) => contains(range, number));
      expect(shared !== undefined && contains(shared, number)).toBe(inAll);
    }),
    { numRuns: runs(1_000) },
  );
});

test("the order of ranges does not matter, nor whether they meet one by one", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, partialRanges, (a, b, c) => {
      const shared = overlap(a, b, c);
      expect(overlap(c, a, b)).toStrictEqual(shared);
      expect(overlap(b, a, c)).toStrictEqual(shared);
      const pair = overlap(a, b);
      expect(pair && overlap(pair, c)).toStrictEqual(shared);
    }),
  );
});

test("a range overlaps itself whole", () => {
  fc.assert(
    fc.property(partialRanges, (range) => {
      expect(overlap(range, range)).toStrictEqual(range);
    }),
  );
});

test("the overlap is contained in both ranges", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, (a, b) => {
      const shared = overlap(a, b);
      fc.pre(shared !== undefined);
      expect(contains(a, shared)).toBe(true);
      expect(contains(b, shared)).toBe(true);
    }),
  );
});

test("there is an overlap or a gap, never both, never neither", () => {
  fc.assert(
    fc.property(partialRanges, partialRanges, (a, b) => {
      expect(overlap(a, b) === undefined).toBe(gap(a, b) !== undefined);
    }),
    { numRuns: runs(1_000) },
  );
});

test("closed ranges share a closed range, which survives JSON", () => {
  fc.assert(
    fc.property(ranges, ranges, (a, b) => {
      const shared = overlap(a, b);
      fc.pre(shared !== undefined);
      expect(JSON.parse(JSON.stringify(shared))).toStrictEqual(shared);
      expect(shared.max - shared.min).toBeGreaterThanOrEqual(0);
    }),
  );
});
