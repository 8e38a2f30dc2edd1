import { expect, test } from "vitest";
import { scaleOf } from "../../../src/report/pictures/scale";

test.each([
  [{ min: 18, max: 26 }, [18, 20, 22, 24, 26]],
  [{ min: 5.5, max: 8.5 }, [5, 6, 7, 8, 9]],
  [{ min: 0, max: 0.5 }, [0, 0.1, 0.2, 0.3, 0.4, 0.5]],
  [{ min: -3, max: 103 }, [-50, 0, 50, 100, 150]],
])("ticks are round figures around %o", (span, ticks) => {
  expect(scaleOf(span, 0, 420, 70).ticks).toEqual(ticks);
});

test("a figure stands in proportion between the first tick and the last, one beyond at the end", () => {
  const { at } = scaleOf({ min: 0, max: 10 }, 100, 300, 50);
  expect([0, 5, 10, -1, 11].map(at)).toEqual([100, 200, 300, 100, 300]);
});
