import fc from "fast-check";
import { expect, test } from "vitest";
import { stated, statedIn, statedOf } from "../../src/ranges/stated";

const end = fc.option(fc.integer(), { nil: undefined });

test("a range has the ends that are stated, and no others", () => {
  fc.assert(
    fc.property(end, end, (min, max) => {
      const known = Object.entries({ min, max }).filter(([, figure]) => figure !== undefined);
      expect(Object.entries(stated(min, max))).toEqual(known);
      expect(Object.entries(statedOf({ min, max }))).toEqual(known);
      expect(Object.entries(statedIn({ min, max }, undefined))).toEqual(known);
      expect(Object.entries(statedIn({ min, max }, "cm"))).toEqual([...known, ["unit", "cm"]]);
    }),
  );
});
