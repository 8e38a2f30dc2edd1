import { describe, expect, test } from "vitest";
import { describeProblem, InvalidInputError, OutsideDomainError, type Problem, refusal } from "../src/errors";

const problem = (parts: Partial<Problem>): Problem => ({
  path: ["water", "pH"],
  code: "type",
  expected: "a finite number",
  found: 7,
  ...parts,
});

const huge = "x".repeat(100_000);

describe("a problem in words", () => {
  test("says where, what would do and what came", () => {
    expect(describeProblem(problem({ path: ["groups", 1, "males"], found: -1 }))).toBe(
      "groups[1].males: expected a finite number, found -1",
    );
    expect(describeProblem(problem({ path: [], explanation: "How sour the water is" }))).toBe(
      "what was given: expected a finite number, found 7. How sour the water is",
    );
  });

  test.each([
    { found: 7, shown: "7" },
    { found: "7", shown: '"7"' },
    { found: undefined, shown: "nothing" },
    { found: "undefined", shown: '"undefined"' },
    { found: null, shown: "null" },
    { found: Number.NaN, shown: "NaN" },
    { found: false, shown: "false" },
    { found: "false", shown: '"false"' },
    { found: 7n, shown: "7n" },
    { found: Symbol("seven"), shown: "Symbol(seven)" },
    { found: () => 7, shown: "a function" },
    { found: [7], shown: "[7]" },
    { found: { pH: "7" }, shown: '{"pH":"7"}' },
    { found: { pH: 7n }, shown: "what JSON cannot hold" },
    { found: Object.create(null), shown: "{}" },
  ])("tells $shown from what looks like it", ({ found, shown }) => {
    expect(describeProblem(problem({ found }))).toBe(`water.pH: expected a finite number, found ${shown}`);
  });

  test.each([
    { part: "a text", parts: { found: huge } },
    { part: "a list", parts: { found: Array.from({ length: 20_000 }, () => "word") } },
    { part: "a big integer", parts: { found: 10n ** 1000n } },
    { part: "a symbol", parts: { found: Symbol(huge) } },
    { part: "one key of the path", parts: { path: [huge] } },
    { part: "a deep path", parts: { path: Array.from({ length: 20_000 }, (_, index) => index) } },
    { part: "the list of what would do", parts: { expected: huge } },
    { part: "the explanation", parts: { explanation: huge } },
  ])("stays short whatever the size of $part", ({ parts }) => {
    expect(describeProblem(problem(parts)).length).toBeLessThan(600);
  });

  test("holds nothing that steers a terminal or hides from a reader", () => {
    const hostile = "a\u001b[31mb\u0000c\nd\u009be\u202ef\u2066g\u200bh\u2028i\ud800j";
    for (const parts of [
      { found: hostile },
      { path: [hostile] },
      { expected: hostile },
      { found: [hostile] },
    ]) {
      expect(describeProblem(problem(parts))).toMatch(/^[^\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]*$/u);
    }
  });

  test("keeps letters of every script", () => {
    expect(describeProblem(problem({ found: "ネオンテトラ, Großer Ährenfisch" }))).toContain(
      "ネオンテトラ, Großer Ährenfisch",
    );
  });
});

test("an error says everything that is wrong, a line each", () => {
  const error = new InvalidInputError([problem({}), problem({ path: ["height"], found: "7" })]);
  expect(error.message).toBe(
    'water.pH: expected a finite number, found 7\nheight: expected a finite number, found "7"',
  );
  expect(error.name).toBe("InvalidInputError");
});

test("a refusal reads its path from text", () => {
  expect(refusal("groups[1].males", "a number", "2").problems).toEqual([
    { path: ["groups", 1, "males"], code: "type", expected: "a number", found: "2" },
  ]);
});

test("an error of range names variable, range and unit", () => {
  const error = new OutsideDomainError("temperature", { min: 0, max: 40 }, 41, "degC");
  expect(error).toBeInstanceOf(RangeError);
  expect(error.message).toBe("temperature: holds from 0 to 40 °C, found 41 °C");
  expect(new OutsideDomainError("pH", { min: 4.5, max: 10 }, 3).message).toBe(
    "pH: holds from 4.5 to 10, found 3",
  );
  expect(error.unit).toBe("degC");
  expect(new OutsideDomainError("mediaArea", { min: 0, max: 1 }, 2, "m2").message).toMatch(
    / 1 m², found 2 m²$/,
  );
});
