import fc from "fast-check";
import { expect, inject, test } from "vitest";
import { runs, seedOf, someOf } from "./runs";

/** What a property was tried with. */
function tried(draw: number): readonly number[] {
  const cases: number[] = [];
  const noted = fc.property(fc.integer(), (drawn) => void cases.push(drawn));
  fc.assert(noted, { numRuns: runs(20), seed: seedOf(draw) });
  return cases;
}

test("a property tries as many cases as it says, or more, and by default a hundred", () => {
  expect(tried(0).length).toBe(20 * inject("depth"));
  expect(inject("depth")).toBeGreaterThanOrEqual(1);
  expect(fc.readConfigureGlobal()).toMatchObject({ seed: inject("seed"), numRuns: runs(100) });
});

test("one seed draws the same cases again, another one others", () => {
  expect(tried(0)).toEqual(tried(0));
  expect(tried(0)).not.toEqual(tried(1));
});

test("all of a list have their turn", () => {
  const all = Array.from({ length: 50 }, (_, index) => index);
  const turns = all.map((turn) => someOf(all, 5, turn));
  expect([...new Set(turns.flat())].sort((a, b) => a - b)).toEqual(all);
  for (const some of turns) expect(some.length).toBeGreaterThanOrEqual(5);
});
