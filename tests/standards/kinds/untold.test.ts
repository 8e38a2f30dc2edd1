import { expect, test } from "vitest";
import { untold } from "../../../src/standards/kinds/untold";
import { fishOfLength, surveyOf } from "../surveys";

const one = (id: string) => ({ species: fishOfLength(id, 4), unsexed: 1 });

test("what no kind can compare is told of any plan, and why", () => {
  expect(untold({ kind: "untold", because: "not-read" }, surveyOf([one("a")]))).toEqual({
    answer: "undetermined",
    open: { reason: "not-read" },
  });
});

test("what is about some species is told of those that the plan holds", () => {
  const rule = { kind: "untold", because: "no-figure", species: ["a", "c"] } as const;
  expect(untold(rule, surveyOf([one("a"), one("b"), one("a")]))).toEqual({
    species: ["a"],
    answer: "undetermined",
    open: { reason: "no-figure" },
  });
  expect(untold(rule, surveyOf([one("b")]))).toBeUndefined();
});
