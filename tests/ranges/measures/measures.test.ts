import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import {
  containment,
  contains,
  gap,
  jaccard,
  type PartialRange,
  pianka,
  schoener,
  simpson,
  sorensen,
} from "../../../src/ranges";
import { runs } from "../../runs";
import { partialRanges, ranges, roughRanges, wideRanges } from "../arbitrary";

const symmetric = { jaccard, sorensen, simpson, schoener, pianka };
const measures = { ...symmetric, containment };

describe.each(Object.entries(measures))("%s", (_, measure) => {
  test("runs from 0 to 1, rounding included", () => {
    fc.assert(
      fc.property(roughRanges, roughRanges, (a, b) => {
        const value = measure(a, b) ?? 0;
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
      }),
      { numRuns: runs(2_000) },
    );
  });

  test("is 1 for a range and itself", () => {
    fc.assert(
      fc.property(roughRanges, (range) => {
        fc.pre(range.min < range.max);
        expect(measure(range, range)).toBe(1);
      }),
    );
  });

  test("is 0 for ranges apart or touching, and only for them", () => {
    fc.assert(
      fc.property(wideRanges, wideRanges, (a, b) => {
        const apart = gap(a, b) !== undefined || a.max === b.min || b.max === a.min;
        expect(measure(a, b) === 0).toBe(apart);
      }),
      { numRuns: runs(1_000) },
    );
  });

  test("does not depend on where zero lies or on the unit", () => {
    fc.assert(
      fc.property(ranges, ranges, fc.integer({ min: -50, max: 50 }), (a, b, shift) => {
        const moved = ({ min, max }: { min: number; max: number }) => ({
          min: 2 * min + shift,
          max: 2 * max + shift,
        });
        expect(measure(moved(a), moved(b))).toBe(measure(a, b));
      }),
    );
  });

  test("has no value where ranges meet and one is one-sided or has zero width", () => {
    const closed = { min: 20, max: 26 };
    const others: readonly PartialRange[] = [{ min: 22 }, { max: 22 }, { min: 26 }, { min: 24, max: 24 }];
    for (const range of others) {
      expect(measure(closed, range)).toBeUndefined();
      expect(measure(range, closed)).toBeUndefined();
      expect(measure(range, range)).toBeUndefined();
    }
  });

  test("is 0 for ranges apart, whatever an open end or a width of zero", () => {
    const closed = { min: 20, max: 26 };
    const others: readonly PartialRange[] = [{ min: 27 }, { max: 19.5 }, { min: 30, max: 30 }];
    for (const range of others) {
      expect(measure(closed, range)).toBe(0);
      expect(measure(range, closed)).toBe(0);
    }
    expect(measure({ min: 22, max: 22 }, { min: 24, max: 24 })).toBe(0);
    expect(measure({ max: 6 }, { min: 7 })).toBe(0);
  });

  test("has a value for the same pairs as every other measure", () => {
    fc.assert(
      fc.property(partialRanges, partialRanges, (a, b) => {
        expect(measure(a, b) === undefined).toBe(jaccard(a, b) === undefined);
      }),
    );
  });

  test("refuses ranges too wide to measure", () => {
    const huge = { min: -1.7e308, max: 1.7e308 };
    expect(() => measure(huge, huge)).toThrow(InvalidInputError);
  });
});

test.each(Object.entries(symmetric))("%s is the same both ways", (_, measure) => {
  fc.assert(
    fc.property(roughRanges, roughRanges, (a, b) => {
      expect(measure(a, b)).toBe(measure(b, a));
    }),
  );
});

test("containment is 1 exactly where one range contains the other", () => {
  fc.assert(
    fc.property(wideRanges, wideRanges, (a, b) => {
      expect(containment(a, b) === 1).toBe(contains(b, a));
    }),
    { numRuns: runs(1_000) },
  );
});

test("jaccard ≤ schoener ≤ pianka ≤ simpson", () => {
  // What is covered together is no less than the wider range, and the geometric mean lies between both widths.
  fc.assert(
    fc.property(wideRanges, wideRanges, (a, b) => {
      const chain = [jaccard, schoener, pianka, simpson].map((measure) => measure(a, b) ?? Number.NaN);
      const [first = 2, second = 2, third = 2, fourth = 2] = chain;
      expect(first).toBeLessThanOrEqual(second + 1e-15);
      expect(second).toBeLessThanOrEqual(third + 1e-15);
      expect(third).toBeLessThanOrEqual(fourth + 1e-15);
    }),
    { numRuns: runs(1_000) },
  );
});

test("sorensen is the harmonic mean of both containments, and twice jaccard over one more", () => {
  fc.assert(
    fc.property(wideRanges, wideRanges, (a, b) => {
      const [ofA, ofB, shared] = [containment(a, b) ?? 0, containment(b, a) ?? 0, jaccard(a, b) ?? 0];
      fc.pre(shared > 0);
      expect(sorensen(a, b)).toBeCloseTo(2 / (1 / ofA + 1 / ofB), 12);
      expect(sorensen(a, b)).toBeCloseTo((2 * shared) / (1 + shared), 12);
    }),
  );
});

test("simpson and schoener are the larger and the smaller containment", () => {
  fc.assert(
    fc.property(wideRanges, wideRanges, (a, b) => {
      const shares = [containment(a, b) ?? Number.NaN, containment(b, a) ?? Number.NaN];
      expect(simpson(a, b)).toBe(Math.max(...shares));
      expect(schoener(a, b)).toBe(Math.min(...shares));
    }),
  );
});

test("a range widened from within the other shares no less of it", () => {
  fc.assert(
    fc.property(wideRanges, wideRanges, fc.nat(20), (a, b, more) => {
      const wider = { min: a.min - more, max: a.max + more };
      expect(containment(b, wider)).toBeGreaterThanOrEqual(containment(b, a) ?? Number.NaN);
    }),
  );
});

test("all follow from the two shares that each range has in common with the other", () => {
  fc.assert(
    fc.property(wideRanges, wideRanges, (a, b) => {
      const [u, v] = [containment(a, b) ?? Number.NaN, containment(b, a) ?? Number.NaN];
      fc.pre(u > 0);
      expect(jaccard(a, b)).toBeCloseTo(1 / (1 / u + 1 / v - 1), 12);
      expect(pianka(a, b)).toBeCloseTo(Math.sqrt(u * v), 12);
    }),
  );
});

test("bins of one degree give more than the even use of a range", () => {
  // As programs that count states do it: 20 to 26 °C are seven whole degrees, 24 to 28 °C five, three of them shared.
  const bins = ({ min, max }: { min: number; max: number }) => max - min + 1;
  const [a, b, shared] = [
    { min: 20, max: 26 },
    { min: 24, max: 28 },
    { min: 24, max: 26 },
  ];
  expect(schoener(a, b)).toBeLessThan(bins(shared) / bins(a));
});
