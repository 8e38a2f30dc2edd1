import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { jsonSchemaOf } from "../../../src/plan/shape/json-schema";
import type { Shape } from "../../../src/plan/shape/shape";
import { shapeProblems } from "../../../src/plan/shape/shape-problems";

const span: Shape = { is: "number", min: 0, max: 1, unit: "cm" };
const positive: Shape = { is: "number", above: 0 };
const count: Shape = { is: "count", min: 1, max: 9 };
const text: Shape = { is: "text", longest: 3 };
const word: Shape = { is: "word", words: ["still", "strong"] };
const list: Shape = { is: "list", of: count, least: 1, most: 2 };
const object: Shape = { is: "object", fields: { a: count, b: text }, required: ["a"] };
const kinds: Shape = {
  is: "kinds",
  by: "shape",
  of: {
    round: {
      is: "object",
      fields: { shape: { is: "word", words: ["round"] }, across: positive },
      required: ["shape", "across"],
    },
  },
};

const given: readonly (readonly [Shape, unknown, string?])[] = [
  [span, 0],
  [span, 1],
  [span, 1.01, "range"],
  [span, -0.01, "range"],
  [span, "0", "type"],
  [positive, 0.001],
  [positive, 0, "range"],
  [{ is: "number" }, -1e9],
  [count, 9],
  [count, 1.5, "range"],
  [count, 10, "range"],
  [count, true, "type"],
  [{ is: "yes-or-no" }, false],
  [{ is: "yes-or-no" }, 0, "type"],
  [text, "abc"],
  [text, "abcd", "text"],
  [text, "", "text"],
  [text, null, "type"],
  [word, "still"],
  [word, "stil", "word"],
  [word, null, "word"],
  [list, [1, 2]],
  [list, [], "range"],
  [list, [1, 2, 3], "too-many"],
  [list, { 0: 1 }, "type"],
  [object, { a: 1 }],
  [object, { a: 1, b: "x" }],
  [object, { b: "x" }, "type"],
  [object, { a: 1, c: 1 }, "unknown-key"],
  [object, [], "type"],
  [object, null, "type"],
  [kinds, { shape: "round", across: 3 }],
  [kinds, { shape: "square", across: 3 }, "word"],
  [kinds, { shape: "constructor" }, "word"],
  [kinds, { shape: "round" }, "type"],
  [kinds, "round", "type"],
];

const cases = given.map(([shape, value, code]) => ({ shape, value, code }));

describe("a shape", () => {
  test.each(cases)("$shape and $value: $code", ({ shape, value, code }) => {
    expect(shapeProblems(shape, value).map((problem) => problem.code)).toEqual(code ? [code] : []);
  });

  test.each(cases)("$shape as a schema says the same of $value", ({ shape, value, code }) => {
    const validate = new Ajv2020().compile(jsonSchemaOf(shape, {}));
    expect(validate(value)).toBe(code === undefined);
  });

  test.each([Number.NaN, Infinity, -Infinity])("has no number %d", (value) => {
    expect(shapeProblems({ is: "number" }, value)).toMatchObject([
      { code: "type", expected: "a finite number" },
    ]);
  });

  test.each([
    [span, "a number from 0 to 1 cm"],
    [positive, "a number above 0"],
    [{ is: "number", max: 5 } as const, "a number up to 5"],
    [count, "a whole number from 1 to 9"],
    [text, "a text"],
    [list, "a list"],
  ])("says what it wants: %j", (shape, expected) => {
    expect(shapeProblems(shape, undefined)).toMatchObject([{ expected, found: undefined }]);
  });

  test("names where each thing is wrong", () => {
    const problems = shapeProblems(
      { is: "object", fields: { list, object } },
      { list: [1, 0], object: { a: 0, c: 1 } },
      ["plan"],
    );
    expect(problems.map(({ path }) => path)).toEqual([
      ["plan", "list", 1],
      ["plan", "object", "a"],
      ["plan", "object", "c"],
    ]);
  });

  test("takes a key that holds nothing for absent", () => {
    expect(shapeProblems(object, { a: 1, b: undefined, c: undefined })).toEqual([]);
  });

  test("sees a hole in a list", () => {
    const holed = [1];
    holed.length = 2;
    expect(shapeProblems(list, holed)).toMatchObject([{ path: [1], code: "type", found: undefined }]);
  });
});
