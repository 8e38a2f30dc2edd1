import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { floorNeeded, runNeeded } from "../../../src/compatibility/animals/room";

/** 2000 cm² for four, 3200 for eight. */
const floors = [
  { least: 2000, for: 4 },
  { least: 3200, for: 8 },
];
const lengths = [
  { least: 60, for: 1 },
  { least: 100, for: 6 },
];

describe("the shortest tank", () => {
  test.each([
    ["one animal: what is stated for one", 1, 60],
    ["two: what the next greater number needs, since nobody says less", 2, 100],
    ["six: what is stated for six", 6, 100],
    ["twenty: what is stated for the greatest number", 20, 100],
    ["a number that is not known: what the fewest need", undefined, 60],
  ])("for %s", (_, count, needed) => {
    expect(runNeeded(lengths, count)).toBe(needed);
  });
});

describe("the least floor", () => {
  test.each([
    ["the stated number", 4, 100, 2000],
    ["a number halfway between two stated ones", 6, 100, 2600],
    ["the greater of two stated numbers", 8, 100, 3200],
    ["two more than that, by the floor of one more", 10, 100, 3400],
    ["two more than that, each at most its share", 10, 5000, 4000],
    ["two more than that, by its share where no floor of one more is stated", 10, undefined, 4000],
    ["one fewer than the least stated number", 3, 100, 1900],
    ["one alone: less by the floor of each who is not there", 1, 200, 1400],
    ["one alone: but never less than half", 1, 500, 1000],
    ["one alone: as much as the fewest, where no floor of one more is stated", 1, undefined, 2000],
    ["a number that is not known: what the fewest need", undefined, 100, 2000],
  ])("for %s", (_, count, further, needed) => {
    expect(floorNeeded(floors, further, count)).toBe(needed);
  });

  test("grows from half to the whole and on where one number alone is stated", () => {
    const [four] = floors;
    const needed = [1, 2, 3, 4, 5, 6].map((count) => floorNeeded(four ? [four] : [], 300, count));
    expect(needed).toStrictEqual([1100, 1400, 1700, 2000, 2300, 2600]);
  });
});

test("nobody's word asks for nothing", () => {
  expect(runNeeded([], 5)).toBe(0);
  expect(floorNeeded([], 100, 5)).toBe(0);
});

describe("whatever is stated", () => {
  /** Rooms for several numbers of animals, of which more never need less. */
  const rooms = fc
    .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 100, max: 9000 })), {
      minLength: 1,
      maxLength: 5,
      selector: ([number]) => number,
    })
    .map((pairs) => {
      const numbers = pairs.map(([number]) => number).sort((a, b) => a - b);
      const sizes = pairs.map(([, size]) => size).sort((a, b) => a - b);
      return numbers.map((number, index) => ({ least: sizes[index] ?? 0, for: number }));
    });
  const further = fc.option(fc.integer({ min: 5, max: 3000 }), { nil: undefined });

  test("what is needed never falls as animals are added", () => {
    fc.assert(
      fc.property(rooms, further, fc.integer({ min: 1, max: 80 }), (stated, more, count) => {
        expect(runNeeded(stated, count + 1)).toBeGreaterThanOrEqual(runNeeded(stated, count));
        expect(floorNeeded(stated, more, count + 1)).toBeGreaterThanOrEqual(floorNeeded(stated, more, count));
      }),
    );
  });

  test("a stated number needs what is stated for it, and the next to it hardly less or more", () => {
    const nearly = 1e-6;
    fc.assert(
      fc.property(rooms, further, (stated, more) => {
        for (const { least, for: number } of stated) {
          expect(runNeeded(stated, number)).toBe(least);
          expect(floorNeeded(stated, more, number)).toBe(least);
          for (const count of [number - nearly, number + nearly])
            expect(floorNeeded(stated, more, count)).toBeCloseTo(least, 1);
        }
      }),
    );
  });

  test("a floor that one more adds is never more than its share", () => {
    fc.assert(
      fc.property(rooms, further, fc.integer({ min: 1, max: 40 }), (stated, more, beyond) => {
        const most = stated.at(-1) ?? { least: 0, for: 1 };
        const count = most.for + beyond;
        expect(floorNeeded(stated, more, count)).toBeLessThanOrEqual(
          (most.least / most.for) * count * (1 + 1e-9),
        );
      }),
    );
  });
});
