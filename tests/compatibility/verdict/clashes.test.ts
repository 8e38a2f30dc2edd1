import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clashes, farthest } from "../../../src/compatibility/verdict/clashes";
import type { Condition } from "../../../src/plan";
import { runs } from "../../runs";

const numbers = fc
  .tuple(
    fc.constantFrom(
      "tank.cover" as const,
      "tank.openWater" as const,
      "water.temperature" as const,
      "water.coolest" as const,
      "water.hottest" as const,
    ),
    fc.integer({ min: 0, max: 8 }),
    fc.constantFrom("min", "max"),
  )
  .map(([on, tenths, end]): Condition => ({ on, wanted: { [end]: tenths / 10 } }));

const words = fc
  .tuple(fc.nat(1), fc.subarray(["bottom", "midwater", "surface"], { minLength: 1 }))
  .map(([of, oneOf]): Condition => ({ on: "group.sex", of, wanted: { oneOf } }));

const conditions = fc.array(fc.oneof(numbers, words), { maxLength: 12 });

/** The facts, each with its party, about which conditions exclude each other. */
const factsApart = (asked: readonly Condition[]) =>
  [
    ...new Set(
      clashes(asked.map((condition) => ({ condition })))
        .flat(2)
        .map(({ condition: { on, of } }) => `${on} ${of}`),
    ),
  ].sort();

describe("of conditions those that go farthest", () => {
  test("exclude each other about the same facts as all of them do", () => {
    fc.assert(
      fc.property(conditions, (asked) => {
        expect(factsApart(farthest(asked))).toEqual(factsApart(asked));
      }),
      { numRuns: runs(1000) },
    );
  });

  test("are some of them, whatever their order, and no more than the ends and the choices", () => {
    fc.assert(
      fc.property(conditions, (asked) => {
        const kept = farthest(asked);
        expect(asked).toEqual(expect.arrayContaining([...kept]));
        expect(factsApart(farthest([...asked].reverse()))).toEqual(factsApart(kept));
        const ofCover = kept.filter(({ on }) => on === "tank.cover");
        expect(ofCover.length).toBeLessThanOrEqual(2);
      }),
    );
  });

  test("a fish that wants 30 % cover and one that wants 60 % ask for 60 %", () => {
    const asked = [0.3, 0.6, 0.4].map((min): Condition => ({ on: "tank.cover", wanted: { min } }));
    expect(farthest(asked)).toEqual([{ on: "tank.cover", wanted: { min: 0.6 } }]);
  });
});

describe("of choices of words", () => {
  const asking = (...oneOf: readonly string[]) => ({
    condition: { on: "tank.substrate", wanted: { oneOf } } as Condition,
  });
  const [sand, pebbles, either] = [asking("sand"), asking("pebbles"), asking("sand", "pebbles")];

  test("those are named that share no word, and nobody who takes either", () => {
    expect(clashes([sand, pebbles, either])).toStrictEqual([[[sand], [pebbles]]]);
  });

  test("each two that differ, where each two share a word and all of them none", () => {
    const [one, other, third] = [asking("a", "b"), asking("b", "c"), asking("a", "c")];
    expect(clashes([one, other, third])).toHaveLength(3);
  });
});
