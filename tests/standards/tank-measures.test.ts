import { expect, test } from "vitest";
import type { PlannedTank } from "../../src/plan";
import { box, fishOfLength, surveyOf } from "./surveys";

const measuresOf = (tank: PlannedTank) =>
  surveyOf([{ species: fishOfLength("a", 3), unsexed: 1 }], tank).measures;

test("of outer sizes, gross counts the glass and water does not", () => {
  const measures = measuresOf({ ...box(60, 30, 36), glass: 0.5, waterBelowRim: 2 });
  // 60 x 30 x 36; 59 x 29 x 33.5
  expect(measures("gross volume")).toEqual({
    of: "gross volume",
    min: 64.8,
    max: 64.8,
    unit: "L",
    sizes: "outer",
  });
  expect(measures("water volume")).toMatchObject({ min: 57.3185, max: 57.3185 });
  expect(measures("water volume to gross volume")).toMatchObject({ min: 57.3185, max: 64.8 });
  expect(measures("front edge")).toMatchObject({ min: 60, max: 60, unit: "cm" });
  expect(measures("length")).toMatchObject({ min: 59, max: 60 });
  expect(measures("width")).toMatchObject({ min: 29, max: 30 });
  expect(measures("water depth")).toMatchObject({ min: 33.5, max: 33.5 });
  expect(measures("depth")).toMatchObject({ min: 33.5, max: 36 });
  expect(measures("floor")).toMatchObject({ min: 0.1711, max: 0.18, unit: "m2" });
});

test("of inner sizes, what is given is inside", () => {
  const measures = measuresOf({
    base: { shape: "rectangle", length: 24, width: 12 },
    height: 12,
    unit: "in",
  });
  expect(measures("front edge")).toMatchObject({ min: 60.96, max: 60.96, sizes: "inner" });
  expect(measures("gross volume")?.min).toBe(measures("water volume")?.max);
});
