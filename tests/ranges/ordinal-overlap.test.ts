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
  ["reversed", { min: "strong", max: "still" }, "b: expected min at most max"],
  ["without an end", {}, "b: expected a range with a min or a max"],
  ["with an unlisted min", { min: "torrent", max: "strong" }, "b.min: expected one of still, gentle"],
  ["with an unlisted min alone", { min: "torrent" }, "b.min: expected one of still, gentle"],
  ["with an unlisted max", { min: "still", max: "torrent" }, "b.max: expected one of still, gentle"],
  [
    "with an unlisted max alone",
    { max: "torrent" },
    'b.max: expected one of still, gentle, moderate, strong, found "torrent"',
  ],
  ["of a name every object has", { min: "constructor" }, "b.min: expected one of"],
  ["of numbers", { min: 0, max: 3 }, "b.min: expected one of"],
  ["with a null end", { min: "still", max: null }, "b.max: expected one of"],
  ["undefined", undefined, "b: expected a range { min, max }, found nothing"],
])("a range %s is none", (_, range, message) => {
  const bad = range as { min: "still" };
  expect(() => ordinalOverlap(flow, bad, { min: "still" })).toThrow(InvalidInputError);
  expect(() => ordinalOverlap(flow, { min: "still" }, bad)).toThrow(message);
});

test("of 50,000 classes, in good time", () => {
  const order = Array.from({ length: 50_000 }, (_, index) => `class ${index}`);
  expect(ordinalOverlap(order, { min: "class 100" }, { max: "class 40000" })).toEqual({
    min: "class 100",
    max: "class 40000",
  });
});

test("an order of anything but names is none", () => {
  const ordered = (order: unknown) => () =>
    ordinalOverlap(order as string[], { min: "low" }, { max: "high" });
  expect(ordered(undefined)).toThrow("order: expected a list, found nothing");
  expect(ordered(["low", 7, "high"])).toThrow("order[1]: expected the name of a class, found 7");
});

test("a class listed twice has no place in the order", () => {
  expect(() => ordinalOverlap(["low", "high", "low"], { min: "low" }, { max: "high" })).toThrow(
    InvalidInputError,
  );
});
