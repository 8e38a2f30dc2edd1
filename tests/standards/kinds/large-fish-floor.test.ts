import { describe, expect, test } from "vitest";
import { largeFishFloor } from "../../../src/standards/kinds/large-fish-floor";
import { adults, animal } from "../../compatibility/animals";
import { box, fishOfLength, inFamily, surveyOf } from "../surveys";

/** Austria, 2. Tierhaltungsverordnung, Annex 5, 1.1 (7). */
const rule = {
  kind: "large-fish-floor",
  longerThan: 40,
  taxa: ["Potamotrygonidae"],
  forTwo: 4,
  eachMore: 1,
} as const;

const large = fishOfLength("large", 60);
const small = { species: fishOfLength("small", 40), unsexed: 20 };

describe("fish over 40 cm when adult", () => {
  test.each([
    [1, 4],
    [2, 4],
    [3, 5],
    [6, 8],
  ])("%i ask for %i m2", (unsexed, floor) => {
    const plan = surveyOf([{ species: large, unsexed }, small], box(400, 100, 60));
    expect(largeFishFloor(rule, plan)).toMatchObject({
      species: ["large"],
      asked: { min: floor, max: floor, unit: "m2" },
      has: { of: "floor", min: 4, max: 4 },
      answer: floor <= 4 ? "met" : "not-met",
    });
  });

  test("young ones count", () => {
    const plan = surveyOf([{ species: large, juveniles: 3, length: 4 }]);
    expect(largeFishFloor(rule, plan)?.asked?.min).toBe(5);
  });
});

test("smaller fish ask for nothing", () => {
  expect(largeFishFloor(rule, surveyOf([small]))).toBeUndefined();
});

test("a family may count at any length", () => {
  const ray = { species: inFamily(fishOfLength("ray", 30), "Potamotrygonidae"), unsexed: 1 };
  expect(largeFishFloor(rule, surveyOf([ray, small]))).toMatchObject({ species: ["ray"], answer: "not-met" });
});

test("where only the greatest is over 40 cm it depends", () => {
  const between = { species: animal("between", { "size.adultLength": adults(25, 45) }), unsexed: 2 };
  expect(largeFishFloor(rule, surveyOf([between]))).toMatchObject({
    asked: { min: 0, max: 4 },
    answer: "depends",
  });
});

test("a fish of unknown length leaves it open", () => {
  const riddle = { species: animal("riddle"), unsexed: 1 };
  expect(largeFishFloor(rule, surveyOf([riddle, small]))).toMatchObject({
    species: ["riddle"],
    answer: "undetermined",
    open: { reason: "missing", trait: "size.adultLength", species: ["riddle"] },
  });
  expect(largeFishFloor(rule, surveyOf([riddle, { species: large, unsexed: 1 }]))?.answer).toBe("not-met");
});
