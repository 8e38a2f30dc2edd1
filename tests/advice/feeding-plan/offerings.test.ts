import fc from "fast-check";
import { expect, test } from "vitest";
import { fewest, type Reaching } from "../../../src/advice/feeding-plan/offerings";

const offering = { food: "dry", place: "surface" } as const;
const reaching: fc.Arbitrary<readonly Reaching[]> = fc
  .array(fc.subarray([0, 1, 2, 3, 4], { minLength: 1 }), { minLength: 1, maxLength: 8 })
  .map((list) => list.map((reaches) => ({ offering, reaches })));

test("so few offerings reach all as the least of all choices", () => {
  fc.assert(
    fc.property(reaching, (found) => {
      const reachedBy = (some: readonly Reaching[]) => new Set(some.flatMap(({ reaches }) => reaches)).size;
      const choices = Array.from({ length: 2 ** found.length }, (_, mask) =>
        found.filter((_one, index) => mask & (1 << index)),
      );
      const least = Math.min(
        ...choices.filter((some) => reachedBy(some) === reachedBy(found)).map(({ length }) => length),
      );
      const best = fewest(found);
      expect(best).toHaveLength(least);
      expect(reachedBy(best)).toBe(reachedBy(found));
    }),
  );
});
