import { expect, test } from "vitest";
import { resolve, standardLength, totalLength } from "../../../src/species";
import { expectRefused } from "../../refused";
import { recordOf } from "../records";

// Standard length is 0.80 to 0.85 of total length: 1/1.22 = 0.82 by FishBase's default, the span from memory.

test.each([
  ["TL", 10, 10, 10],
  ["SL", 8.5, 10, 10.625],
  ["FL", 8, 8, 10],
  ["unstated", 8, 8, 10],
  ["shell", 2.5, 2.5, 2.5],
  ["disc", 45, 45, 45],
  ["body", 3, 3, 3],
] as const)("%s of %d cm is a total length of %d to %d cm", (measure, length, min, max) => {
  const total = { min: expect.closeTo(min, 12), max: expect.closeTo(max, 12) };
  expect(totalLength(length, measure)).toEqual(total);
  const adultLength = [{ by: "common-practice", value: length, as: "greatest", measure }] as const;
  expect(resolve(recordOf({ size: { adultLength } })).size?.adultLength?.value).toEqual([
    { length, measure, as: "greatest", total },
  ]);
});

test("back from a total length the span holds the standard length it came from", () => {
  const { min, max } = totalLength(8.5, "SL");
  expect(standardLength(min).max).toBeCloseTo(8.5, 12);
  expect(standardLength(max).min).toBeCloseTo(8.5, 12);
  expect(standardLength(10)).toEqual({ min: expect.closeTo(8, 12), max: expect.closeTo(8.5, 12) });
});

test("no fish has a share of standard length that no trait could state, nor a length over ten metres", () => {
  for (const share of [0, 1e-310, 1e-10, 0.49, 1.01, Number.NaN]) {
    expectRefused(() => totalLength(5, "SL", share), /^share$/);
    expectRefused(() => standardLength(5, share), /^share$/);
  }
  for (const share of [0.5, 1]) expect(totalLength(5, "SL", share).max).toBe(5 / share);
  for (const length of [0, 1000.1, 1e308]) {
    expectRefused(() => totalLength(length, "SL", 0.5), /^length$/);
    expectRefused(() => standardLength(length), /^total length$/);
  }
  expect(totalLength(1000, "SL").max).toBe(1250);
});
