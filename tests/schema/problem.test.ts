import { expect, test } from "vitest";
import { describeProblem, RecordError } from "../../src/schema";

test("a problem in a sentence names the place, what should stand there and what does", () => {
  expect(describeProblem({ path: "size.lifespan[0].value", found: "4", expected: "number" })).toBe(
    'size.lifespan[0].value: expected number, found "4".',
  );
});

test("what the field means follows", () => {
  const problem = {
    path: "water.pH",
    found: [],
    expected: "at least 1 entry",
    explanation: "Acidity of the water.",
  };
  expect(describeProblem(problem)).toBe(
    "water.pH: expected at least 1 entry, found []. Acidity of the water.",
  );
});

test("what is missing is nothing, and the whole is the record", () => {
  expect(describeProblem({ path: "", found: undefined, expected: "object" })).toBe(
    "the record: expected object, found nothing.",
  );
});

test("what JSON cannot hold is said to be that", () => {
  const circle: unknown[] = [];
  circle.push(circle);
  for (const found of [10n, circle]) {
    expect(describeProblem({ path: "id", found, expected: "string" })).toMatch(
      /^id: expected string, found .+\.$/,
    );
  }
});

test("hostile text cannot break out of its line", () => {
  const text = "a\n\u001b[31mall is well";
  expect(describeProblem({ path: text, found: text, expected: text })).not.toMatch(/\p{Cc}/u);
});

test("the error has a name, a list and a line for each problem", () => {
  const problems = [
    { path: "id", found: 1, expected: "string" },
    { path: "names", found: 2, expected: "record" },
  ];
  const error = new RecordError(problems);
  expect(error).toBeInstanceOf(Error);
  expect(error.name).toBe("RecordError");
  expect(error.problems).toStrictEqual(problems);
  expect(error.message.split("\n")).toHaveLength(2);
});
