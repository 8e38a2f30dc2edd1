import { expect, test } from "vitest";
import { amissIn } from "../../../src/advice/entry-order/ties";

const ties = {
  defending: new Set([1, 2]),
  meals: [{ hunter: 0, prey: 3 }],
  waitingForPlants: new Set<number>(),
};

test("what is amiss is each that defends a place before each that does not, and each hunter before its prey", () => {
  expect(amissIn(ties, [1], [0, 3])).toEqual([2, 0]);
  expect(amissIn(ties, [0, 1], [2, 3])).toEqual([1, 1]);
  expect(amissIn(ties, [0, 3], [1, 2])).toEqual([0, 0]);
  expect(amissIn(ties, [3], [0])).toEqual([0, 0]);
});
