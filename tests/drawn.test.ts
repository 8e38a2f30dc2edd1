import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyOf, hashOf, pick, someNamed } from "./drawn";
import { runs } from "./runs";

const list = Array.from({ length: 170 }, (_, index) => `fish ${index}`);
const grown = ["a newcomer", ...list.slice(0, 80), "another", ...list.slice(80)];
const nameOf = (name: string) => name;
const drawnOf = (all: readonly string[]) => fc.sample(anyOf(all, nameOf), { numRuns: 2000, seed: 1 });

test("a text gives the same number again, another one another", () => {
  expect(hashOf("abc")).toBe(0xba7816bf); // FIPS 180-4: SHA-256 of "abc" begins so.
  expect(hashOf("abd")).not.toBe(hashOf("abc"));
});

test("what a text picks is one of those given, and each is picked by some", () => {
  const picked = list.map((text) => pick(["left", "right"], text));
  expect(new Set(picked)).toEqual(new Set(["left", "right"]));
});

describe("of a list that grows", () => {
  test("all are drawn, none much more often than others", () => {
    const drawn = drawnOf(list);
    const counts = list.map((name) => drawn.filter((one) => one === name).length);
    expect(Math.min(...counts)).toBeGreaterThan(0);
    expect(Math.max(...counts)).toBeLessThan(3 * (2000 / list.length));
  });

  test("the same are drawn as before, but where a new one is", () => {
    const [before, after] = [drawnOf(list), drawnOf(grown)];
    const changed = after.filter((drawn, index) => drawn !== before[index]);
    expect(new Set(changed)).toEqual(new Set(["a newcomer", "another"]));
    expect(changed.length).toBeLessThan(3 * (2000 / list.length) * 2);
  });

  test("some are as many as are asked for, at most as many new ones among them as there are", () => {
    for (const turn of [0, 1, 2, 1_234_567_890]) {
      const [before, after] = [list, grown].map((all) => new Set(someNamed(all, nameOf, 20, turn)));
      expect(before?.size).toBe(Math.min(runs(20), list.length));
      expect(after?.size).toBe(Math.min(runs(20), grown.length));
      expect([...(before ?? [])].filter((name) => !after?.has(name)).length).toBeLessThanOrEqual(2);
    }
  });

  test("all have their turn", () => {
    const turns = Array.from({ length: 30 }, (_, turn) => someNamed(list, nameOf, 20, turn));
    expect(new Set(turns.flat())).toEqual(new Set(list));
    for (const some of turns) expect(some.length).toBeGreaterThanOrEqual(20);
  });

  test("nobody is asked for whom there is not", () => {
    expect(someNamed(["one"], nameOf, 20, 3)).toEqual(["one"]);
    expect(() => drawnOf([])).toThrow("nothing to draw from");
  });
});
