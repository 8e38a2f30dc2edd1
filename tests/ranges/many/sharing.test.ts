import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import { overlap, type PartialRange, rangeColumns, sharing } from "../../../src/ranges";
import { partialRanges } from "../arbitrary";

const columnsOf = (ranges: readonly PartialRange[]) =>
  rangeColumns(
    ranges.map((kept, index) => ({ id: `species-${index}`, water: { pH: { value: { kept } } } })),
    "water.pH",
  );

test("who shares is who has an overlap", () => {
  fc.assert(
    fc.property(fc.array(partialRanges, { maxLength: 30 }), partialRanges, (ranges, range) => {
      const sharers = ranges.flatMap((other, index) => (overlap(other, range) ? [`species-${index}`] : []));
      expect(sharing(columnsOf(ranges), range)).toStrictEqual(sharers);
    }),
  );
});

test.each([
  ["no columns", undefined, { min: 6 }],
  ["columns of unequal length", { ...columnsOf([{ min: 6 }]), min: new Float64Array(2) }, { min: 6 }],
  ["a column of words", { ...columnsOf([{ min: 6 }]), max: ["8"] }, { min: 6 }],
  ["a reversed range", columnsOf([]), { min: 7, max: 6 }],
  [
    "a reversed range in the columns",
    { ids: ["a"], min: Float64Array.of(7), max: Float64Array.of(6) },
    { min: 6 },
  ],
  [
    "an end that is no number",
    { ids: ["a"], min: Float64Array.of(Number.NaN), max: Float64Array.of(6) },
    { min: 6 },
  ],
])("refuses %s", (_, columns, range) => {
  expect(() => Reflect.apply(sharing, undefined, [columns, range])).toThrow(InvalidInputError);
});
