import { expect, test } from "vitest";
import { corners } from "../../../src/advice/mix-water/corners";

test("two sources mix to an end that lies between them", () => {
  expect(corners(2, [{ ofSources: [0, 16], ends: [4] }])).toEqual(
    expect.arrayContaining([
      [1, 0],
      [0, 1],
      [0.75, 0.25],
    ]),
  );
});

test("no mixture takes less than nothing of a source to reach an end beyond all of them", () => {
  expect(corners(2, [{ ofSources: [4, 16], ends: [2, 20] }])).toEqual([
    [1, 0],
    [0, 1],
  ]);
});
