import fc from "fast-check";
import { expect, test } from "vitest";
import { gathered } from "../src/gathered";

test("what comes of several items is what flatMap makes of them", () => {
  const listOf = (item: number) => Array.from({ length: Math.abs(item) % 4 }, (_, index) => item + index);
  fc.assert(
    fc.property(fc.array(fc.integer()), (items) => {
      expect(gathered(items, listOf)).toEqual(items.flatMap(listOf));
      expect(gathered(Object.freeze([...items]), listOf)).toEqual(items.flatMap(listOf));
    }),
  );
});
