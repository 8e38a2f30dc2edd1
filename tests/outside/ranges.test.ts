import { describe, expect, test } from "vitest";
import { containment, jaccard, pianka, type Range, schoener, simpson, sorensen } from "../../src/ranges";

/**
 * How much of each of many small resource states a species uses that spreads itself evenly over its range: the
 * share of its range that falls into the state. The shares sum to 1.
 */
function utilisation(range: Range, states: readonly Range[]): readonly number[] {
  const used = states.map((state) => Math.min(state.max, range.max) - Math.max(state.min, range.min));
  const positive = used.map((share) => Math.max(0, share));
  const total = positive.reduce((sum, share) => sum + share, 0);
  return positive.map((share) => share / total);
}

/** Resource states from 0 to 40, each 0.002 wide. */
const states = Array.from({ length: 20_000 }, (_, i) => ({ min: i / 500, max: (i + 1) / 500 }));

const sum = (terms: readonly number[]) => terms.reduce((total, term) => total + term, 0);
const paired = (p: readonly number[], q: readonly number[], term: (p: number, q: number) => number) =>
  sum(p.map((share, i) => term(share, q[i] ?? Number.NaN)));

const pairs: readonly (readonly [string, Range, Range])[] = [
  ["partial", { min: 20, max: 26 }, { min: 24, max: 30 }],
  ["unequal", { min: 18, max: 28 }, { min: 25, max: 27 }],
  ["nested", { min: 5.5, max: 8 }, { min: 6, max: 7.25 }],
  ["the same", { min: 22, max: 25 }, { min: 22, max: 25 }],
  ["touching", { min: 20, max: 24 }, { min: 24, max: 28 }],
  ["apart", { min: 4, max: 10 }, { min: 12, max: 20 }],
  ["off the grid", { min: 21.3337, max: 26.0001 }, { min: 23.7773, max: 29.1119 }],
];

describe.each(pairs)("niche overlap of ranges that are %s, by the published sums", (_, a, b) => {
  const p = utilisation(a, states);
  const q = utilisation(b, states);
  // A range that ends within a state of 0.002 errs by less than a state in the narrowest width, 1.25.
  const tolerance = 0.002 / 1.25;

  test("Schoener 1970: D = 1 − ½ Σ|p − q|", () => {
    const published = 1 - paired(p, q, (x, y) => Math.abs(x - y)) / 2;
    expect(Math.abs((schoener(a, b) ?? Number.NaN) - published)).toBeLessThan(tolerance);
  });

  test("Pianka 1973: O = Σpq / √(Σp² Σq²)", () => {
    const squares = paired(p, p, (x, y) => x * y) * paired(q, q, (x, y) => x * y);
    const published = paired(p, q, (x, y) => x * y) / Math.sqrt(squares);
    expect(Math.abs((pianka(a, b) ?? Number.NaN) - published)).toBeLessThan(tolerance);
  });

  // The four below count states as the sources count species: a state is used or it is not.
  const used = (shares: readonly number[]) => new Set(shares.flatMap((share, i) => (share > 0 ? [i] : [])));
  const first = used(p);
  const second = used(q);
  const common = [...first].filter((state) => second.has(state)).length;

  test("Jaccard 1912: common / all", () => {
    const all = new Set([...first, ...second]).size;
    expect(Math.abs((jaccard(a, b) ?? Number.NaN) - common / all)).toBeLessThan(tolerance);
  });

  test("Sørensen 1948: twice common / the sum of both", () => {
    const published = (2 * common) / (first.size + second.size);
    expect(Math.abs((sorensen(a, b) ?? Number.NaN) - published)).toBeLessThan(tolerance);
  });

  test("Simpson 1960: common / fewer", () => {
    const fewer = Math.min(first.size, second.size);
    expect(Math.abs((simpson(a, b) ?? Number.NaN) - common / fewer)).toBeLessThan(tolerance);
  });

  test("Broder 1997, containment: common / those of the first", () => {
    expect(Math.abs((containment(a, b) ?? Number.NaN) - common / first.size)).toBeLessThan(tolerance);
  });
});

describe("worked by hand from the formulas", () => {
  // a is 6 wide, b 4; they share 24 to 26, 2 wide, and cover 20 to 28, 8 wide together. No tolerance but for √.
  const a = { min: 20, max: 26 };
  const b = { min: 24, max: 28 };

  test("Jaccard: 2/8", () => expect(jaccard(a, b)).toBe(0.25));
  test("Sørensen: 4/10", () => expect(sorensen(a, b)).toBe(0.4));
  test("Simpson: 2/4", () => expect(simpson(a, b)).toBe(0.5));
  test("Broder: 2/6 of a, 2/4 of b", () => {
    expect(containment(a, b)).toBe(2 / 6);
    expect(containment(b, a)).toBe(2 / 4);
  });
  // p = 1/6 on a, q = 1/4 on b: ½∫|p − q| = ½ (4/6 + 2 (1/4 − 1/6) + 2/4) = 2/3.
  test("Schoener: 1 − 2/3", () => expect(schoener(a, b)).toBeCloseTo(1 / 3, 14));
  // ∫pq = 2/24, ∫p² = 1/6, ∫q² = 1/4: O = (1/12) √24 = 1/√6.
  test("Pianka: 1/√6", () => expect(pianka(a, b)).toBeCloseTo(0.4082482904638631, 14));
});
