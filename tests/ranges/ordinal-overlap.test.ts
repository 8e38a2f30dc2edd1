import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { ordinalOverlap } from "../../src/ranges";

const flow = ["still", "gentle", "moderate", "strong"] as const;

test("two ordinal ranges share the classes in both", () => {
  const slow = { min: "still", max: "moderate" } as const;
  expect(ordinalOverlap(flow, slow, { min: "gentle", max: "strong" })).toEqual({
    min: "gentle",
    max: "moderate",
  });
  expect(ordinalOverlap(flow, slow, { min: "moderate", max: "strong" })).toEqual({
    min: "moderate",
    max: "moderate",
  });
  expect(ordinalOverlap(flow, slow, { min: "strong", max: "strong" })).toBeUndefined();
});

test("an absent end reaches to the end of the list", () => {
  expect(ordinalOverlap(flow, { min: "gentle" }, { min: "moderate" })).toEqual({
    min: "moderate",
    max: "strong",
  });
  expect(ordinalOverlap(flow, { max: "gentle" }, { max: "moderate" })).toEqual({
    min: "still",
    max: "gentle",
  });
  expect(ordinalOverlap(flow, { max: "gentle" }, { min: "moderate" })).toBeUndefined();
});

test("it agrees with the classes listed one by one, both ways", () => {
  const index = fc.integer({ min: 0, max: flow.length - 1 });
  const ordinal = fc.tuple(index, index).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  const named = ([min, max]: readonly [number, number]) => ({ min: flow[min], max: flow[max] });
  fc.assert(
    fc.property(ordinal, ordinal, (a, b) => {
      const inBoth = flow.filter((_, i) => a[0] <= i && i <= a[1] && b[0] <= i && i <= b[1]);
      const expected = inBoth.length === 0 ? undefined : { min: inBoth[0], max: inBoth[inBoth.length - 1] };
      expect(ordinalOverlap(flow, named(a), named(b))).toEqual(expected);
      expect(ordinalOverlap(flow, named(b), named(a))).toEqual(expected);
    }),
  );
});

test.each([
  ["reversed", { min: "strong", max: "still" }],
  ["without an end", {}],
  ["with an unlisted min", { min: "torrent", max: "strong" }],
  ["with an unlisted max", { min: "still", max: "torrent" }],
  ["of a name every object has", { min: "constructor" }],
  ["undefined", undefined],
])("a range %s is none", (_, range) => {
  const bad = range as { min: "still" };
  expect(() => ordinalOverlap(flow, bad, { min: "still" })).toThrow(InvalidInputError);
  expect(() => ordinalOverlap(flow, { min: "still" }, bad)).toThrow(
    /^b: expected classes of still < gentle < moderate < strong, min at most max, found/,
  );
});

test("a class listed twice has no place in the order", () => {
  expect(() => ordinalOverlap(["low", "high", "low"], { min: "low" }, { max: "high" })).toThrow(
    InvalidInputError,
  );
});
