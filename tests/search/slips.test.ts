import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slips } from "../../src/search/slips";

test.each([
  ["guppy", "guppy", 0],
  ["gup", "guppy", 0],
  ["gupy", "guppy", 1],
  ["gupppy", "guppy", 1],
  ["gippy", "guppy", 1],
  ["ugppy", "guppy", 1],
  ["guppys", "guppy", 1],
  ["ugpp", "guppy", 1],
  ["ugpyp", "guppy", 2],
  ["gappi", "guppy", 2],
  ["molly", "guppy", Number.POSITIVE_INFINITY],
])("%s for %s: %s", (typed, name, expected) => {
  expect(slips(typed, name, 2)).toBe(expected);
});

describe("compared with the distance as a table of all beginnings computes it", () => {
  /** The distance of optimal string alignment, by its recurrence. */
  function distance(a: string, b: string): number {
    if (a === "" || b === "") return a.length + b.length;
    const [x, y] = [a.slice(0, -1), b.slice(0, -1)];
    const ways = [distance(x, b) + 1, distance(a, y) + 1, distance(x, y) + (a.at(-1) === b.at(-1) ? 0 : 1)];
    if (a.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1))
      ways.push(distance(a.slice(0, -2), b.slice(0, -2)) + 1);
    return Math.min(...ways);
  }
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 5 });

  test("it is the least to any beginning of the name", () => {
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 2 }), (typed, name, most) => {
        const beginnings = Array.from({ length: name.length + 1 }, (_, end) => name.slice(0, end));
        const least = Math.min(...beginnings.map((beginning) => distance(typed, beginning)));
        expect(slips(typed, name, most)).toBe(least <= most ? least : Number.POSITIVE_INFINITY);
      }),
    );
  });
});
