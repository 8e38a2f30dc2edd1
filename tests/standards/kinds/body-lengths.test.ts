import { expect, test } from "vitest";
import { bodyLengths } from "../../../src/standards/kinds/body-lengths";
import { adults, animal } from "../../compatibility/animals";
import { box, fishOfStandardLength, surveyOf } from "../surveys";

/** Switzerland, Tierschutzverordnung (SR 455.1), Annex 2 Table 8, note b. */
const swiss = [
  { kind: "body-lengths", side: "length", lengths: 3, by: "present standard length" },
  { kind: "body-lengths", side: "width", lengths: 2, by: "present standard length" },
  { kind: "body-lengths", side: "water depth", lengths: 1, by: "present standard length" },
] as const;

const small = { species: fishOfStandardLength("a", 3), unsexed: 10 };
const large = { species: fishOfStandardLength("b", 50), unsexed: 1 };

test("one of 50 cm asks for 150 x 100 x 50 cm, whatever swims beside it", () => {
  const plan = surveyOf([small, large], box(150, 100, 50));
  expect(swiss.map((rule) => bodyLengths(rule, plan))).toMatchObject(
    [150, 100, 50].map((least) => ({ asked: { min: least, max: least, unit: "cm" }, answer: "met" })),
  );
  const shorter = surveyOf([small, large], box(149, 99, 49));
  expect(swiss.map((rule) => bodyLengths(rule, shorter)?.answer)).toEqual(["not-met", "not-met", "not-met"]);
});

test("ten of 3 cm ask for 9 x 6 cm, 3 cm deep", () => {
  const plan = surveyOf([small]);
  expect(swiss.map((rule) => bodyLengths(rule, plan)?.asked?.max)).toEqual([9, 6, 3]);
});

test("where glass takes some of a side it may depend", () => {
  const plan = surveyOf([large], { ...box(150, 100, 52), glass: 1 });
  expect(swiss.map((rule) => bodyLengths(rule, plan)?.answer)).toEqual(["depends", "depends", "met"]);
});

test("a fish of unknown length leaves it open", () => {
  const riddle = { species: animal("riddle"), unsexed: 1 };
  expect(bodyLengths(swiss[0], surveyOf([small, riddle]))).toMatchObject({
    asked: { min: 9 },
    answer: "undetermined",
    open: { reason: "missing", trait: "size.adultLength", species: ["riddle"] },
  });
  expect(bodyLengths(swiss[0], surveyOf([large, riddle]))?.answer).toBe("not-met");
});

test("some species only: 10 adult lengths for goldfish (2. Tierhaltungsverordnung, Annex 5, 1.1 (7))", () => {
  const rule = {
    kind: "body-lengths",
    side: "length",
    lengths: 10,
    by: "adult total length",
    species: ["carassius-auratus"],
  } as const;
  const goldfish = animal("carassius-auratus", { "size.adultLength": adults(20, 30) });
  const young = { species: goldfish, juveniles: 2, length: 5 };
  expect(bodyLengths(rule, surveyOf([large]))).toBeUndefined();
  expect(bodyLengths(rule, surveyOf([large, young], box(250, 60, 60)))).toMatchObject({
    species: ["carassius-auratus"],
    asked: { min: 200, max: 300 },
    answer: "depends",
  });
});
