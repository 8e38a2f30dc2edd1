import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import {
  containment,
  contains,
  gap,
  jaccard,
  limitingPair,
  overlap,
  pianka,
  type Range,
  schoener,
  simpson,
  sorensen,
  width,
} from "../../src/ranges";

const good = { min: 20, max: 26 };

const functions: Readonly<Record<string, (range: Range) => unknown>> = {
  "overlap, first": (range) => overlap(range, good),
  "overlap, third": (range) => overlap(good, good, range),
  "gap, first": (range) => gap(range, good),
  "gap, second": (range) => gap(good, range),
  "contains, outer": (range) => contains(range, good),
  "contains, inner": (range) => contains(good, range),
  width,
  "jaccard, first": (range) => jaccard(range, good),
  "jaccard, second": (range) => jaccard(good, range),
  "simpson, first": (range) => simpson(range, good),
  "simpson, second": (range) => simpson(good, range),
  "sorensen, first": (range) => sorensen(range, good),
  "sorensen, second": (range) => sorensen(good, range),
  "containment, first": (range) => containment(range, good),
  "containment, second": (range) => containment(good, range),
  "schoener, first": (range) => schoener(range, good),
  "schoener, second": (range) => schoener(good, range),
  "pianka, first": (range) => pianka(range, good),
  "pianka, second": (range) => pianka(good, range),
  limitingPair: (range) => limitingPair([good, range]),
};

// What a caller without types may pass.
const noRanges: readonly (readonly [string, unknown])[] = [
  ["reversed", { min: 26, max: 20 }],
  ["without an end", {}],
  ["with both ends undefined", { min: undefined, max: undefined }],
  ["with NaN", { min: Number.NaN, max: 26 }],
  ["with NaN alone", { max: Number.NaN }],
  ["infinite above", { min: 20, max: Infinity }],
  ["infinite below", { min: -Infinity, max: 20 }],
  ["infinite at one point", { min: Infinity, max: Infinity }],
  ["of text", { min: "20", max: "26" }],
  ["with a null end", { min: 20, max: null }],
  ["that is a list", [20, 26]],
  ["undefined", undefined],
  ["null", null],
];

describe.each(Object.entries(functions))("%s", (_, apply) => {
  test.each(noRanges)("rejects a range %s", (_, range) => {
    expect(() => apply(range as Range)).toThrow(InvalidInputError);
  });

  test("takes a proper range", () => {
    expect(() => apply({ min: 22, max: 22 })).not.toThrow();
  });

  test("leaves it as it was", () => {
    expect(() => apply(Object.freeze({ min: 18, max: 24 }))).not.toThrow();
  });
});

test.each([
  { range: { min: 26, max: 20 }, path: ["ranges", 1], expected: "min at most max", code: "range" },
  { range: { min: "20" }, path: ["ranges", 1, "min"], expected: "a finite number", code: "type" },
  { range: { min: 20, max: null }, path: ["ranges", 1, "max"], expected: "a finite number", code: "type" },
  { range: {}, path: ["ranges", 1], expected: "a range with a min or a max", code: "type" },
  { range: 20, path: ["ranges", 1], expected: "a range { min, max }", code: "type" },
])("the error says which range, what would do and what came: $expected", ({ range, ...problem }) => {
  const refused = expect.objectContaining({ problems: [expect.objectContaining(problem)] });
  expect(() => overlap(good, range as Range)).toThrow(refused);
});
