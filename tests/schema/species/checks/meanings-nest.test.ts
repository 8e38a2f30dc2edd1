import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

const said = (as: string, min?: number, max?: number, more = {}) => ({
  by: "common-practice",
  as,
  value: { ...(min !== undefined && { min }), ...(max !== undefined && { max }) },
  ...more,
});
const problems = (...temperature: unknown[]) =>
  problemsWith({ water: { temperature } }).map(([, expected]) => expected);

test("optimum in kept, kept in tolerated, tolerated within the limits is sound, touching or not", () => {
  expect(
    problems(said("optimum", 20, 24), said("kept", 18, 24), said("tolerated", 14, 28), said("limit", 6, 40)),
  ).toStrictEqual([]);
});

test.each([
  [said("optimum", 17, 22), said("kept", 18, 24), "optimum within kept"],
  [said("optimum", 20, 29), said("tolerated", 14, 28), "optimum within tolerated"],
  [said("kept", 18, 30), said("tolerated", 14, 28), "kept within tolerated"],
  [said("kept", 18, 24), said("limit", 20), "kept within limit"],
  [said("tolerated", 2, 28), said("limit", 6, 40), "tolerated within limit"],
  [said("optimum", undefined, 24), said("kept", 18, 24), "optimum within kept"],
])("what does not nest is told", (inner, outer, expected) => {
  expect(problems(inner, outer)).toStrictEqual([expected]);
  expect(problems(outer, inner)).toStrictEqual([expected]);
});

test("what was found in the wild or in a laboratory may lie anywhere", () => {
  expect(
    problems(said("kept", 18, 24), said("limit", 6, 40), said("wild", 2, 30), said("tested", 1, 44)),
  ).toStrictEqual([]);
});

test("what is set aside and what holds for fry does not matter", () => {
  expect(
    problems(
      said("kept", 18, 24),
      said("optimum", 26, 28, { stage: "fry" }),
      said("limit", 20, 22, { setAside: "Fish from one pond." }),
    ),
  ).toStrictEqual([]);
});

test("units are converted before", () => {
  expect(problems(said("kept", 64.4, 75.2, { unit: "degF" }), said("optimum", 20, 22))).toStrictEqual([]);
  expect(problems(said("kept", 64.4, 75.2, { unit: "degF" }), said("optimum", 20, 25))).toStrictEqual([
    "optimum within kept",
  ]);
});

test("of several statements of one meaning the one that counts is looked at", () => {
  const adopted = said("kept", 18, 24, { adopt: "Long practice." });
  const curated = said("kept", 10, 20, { by: "curator", note: "Weighed." });
  expect(problems(curated, adopted, said("optimum", 22, 24))).toStrictEqual([]);
  expect(problems(curated, said("kept", 18, 24), said("optimum", 22, 24))).toStrictEqual([
    "optimum within kept",
  ]);
});

test("statements of one side each are compared as the span that they make together", () => {
  const [low, high] = [said("limit", 6), said("limit", undefined, 40, { by: "curator", note: "Weighed." })];
  expect(problems(said("kept", 18, 24), low, high)).toStrictEqual([]);
  expect(problems(said("kept", 18, 41), low, high)).toStrictEqual(["kept within limit"]);
  expect(problems(said("kept", 5, 24), low, high)).toStrictEqual(["kept within limit"]);
});
