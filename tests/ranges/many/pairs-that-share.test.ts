import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import { overlap, type PartialRange, pairsThatShare, rangeColumns } from "../../../src/ranges";
import { runs } from "../../runs";
import { partialRanges } from "../arbitrary";

const columnsOf = (ranges: readonly PartialRange[]) =>
  rangeColumns(
    ranges.map((kept, index) => ({ id: `species-${index}`, water: { pH: { value: { kept } } } })),
    "water.pH",
  );

/** Every pair tried one by one. */
const byTrial = (ranges: readonly PartialRange[]) =>
  ranges.flatMap((a, i) =>
    ranges.slice(i + 1).flatMap((b, offset) => {
      const shared = overlap(a, b);
      return shared ? [[i, i + 1 + offset, shared] as const] : [];
    }),
  );

const inOrder = (a: readonly [number, number, unknown], b: readonly [number, number, unknown]) =>
  a[0] - b[0] || a[1] - b[1];

test("the sweep finds the pairs that trying each with each finds, and what they share", () => {
  fc.assert(
    fc.property(fc.array(partialRanges, { maxLength: 40 }), (ranges) => {
      expect([...pairsThatShare(columnsOf(ranges))].sort(inOrder)).toStrictEqual(byTrial(ranges));
    }),
    { numRuns: runs(500) },
  );
});

test("a pair comes when it is asked for, and what has come stays as it was", () => {
  const pairs = pairsThatShare(
    columnsOf([
      { min: 5, max: 7 },
      { min: 6, max: 8 },
      { min: 6.5, max: 7.5 },
    ]),
  );
  const first = pairs.next();
  expect(first).toStrictEqual({ done: false, value: [0, 1, { min: 6, max: 7 }] });
  expect([...pairs]).toHaveLength(2);
  expect(pairs.next()).toStrictEqual({ done: true, value: undefined });
  expect(first.value).toStrictEqual([0, 1, { min: 6, max: 7 }]);
});

test("of none, and of one alone, there are no pairs", () => {
  expect([...pairsThatShare(columnsOf([]))]).toStrictEqual([]);
  expect([...pairsThatShare(columnsOf([{ min: 5 }]))]).toStrictEqual([]);
});

test.each([
  ["a lower end that is no number", [5, Number.NaN, 4], [6, 9, 5]],
  ["an upper end that is no number", [5, 1, 4], [6, Number.NaN, 5]],
  ["a reversed range", [5, 9, 4], [6, 1, 5]],
])("refuses %s among the columns, which would lose pairs of others", (_, min, max) => {
  const columns = { ids: ["a", "b", "c"], min: Float64Array.from(min), max: Float64Array.from(max) };
  const call = () => pairsThatShare(columns);
  expect(call).toThrow(InvalidInputError);
  expect(call).toThrow("columns.max[1]");
});

test("refuses what are no columns", () => {
  expect(() => Reflect.apply(pairsThatShare, undefined, [[]])).toThrow(InvalidInputError);
});
