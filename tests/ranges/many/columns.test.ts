import { describe, expect, test } from "vitest";
import { allSpecies } from "../../../src/catalog";
import { InvalidInputError } from "../../../src/errors";
import { rangeColumns } from "../../../src/ranges";

const temperatures = rangeColumns(allSpecies, "water.temperature");

describe("columns of ranges", () => {
  test("hold the kept span of every species that has one, in the order given", () => {
    const kept = allSpecies.flatMap(({ id, water }) => {
      const range = water?.temperature?.value.kept;
      return range ? [{ id, range }] : [];
    });
    expect(temperatures.ids).toStrictEqual(kept.map(({ id }) => id));
    expect([...temperatures.min]).toStrictEqual(kept.map(({ range }) => range.min ?? -Infinity));
    expect([...temperatures.max]).toStrictEqual(kept.map(({ range }) => range.max ?? Infinity));
  });

  test("leave out who has no range, and take an open end as without end", () => {
    const known = { id: "known", water: { generalHardness: { value: { kept: { max: 8 } } } } };
    const unknown = { id: "unknown", water: {} };
    expect(
      rangeColumns<typeof known>([known, unknown as unknown as typeof known], "water.generalHardness"),
    ).toStrictEqual({
      ids: ["known"],
      min: Float64Array.of(-Infinity),
      max: Float64Array.of(8),
    });
  });

  test.each([
    ["no list", "neon", "water.pH"],
    ["a list of words", ["neon"], "water.pH"],
    ["no path", [], undefined],
    ["a section alone", [], "water"],
    ["a reversed range", [{ id: "a", water: { pH: { value: { kept: { min: 7, max: 6 } } } } }], "water.pH"],
    ["a value that is no range", [{ id: "a", water: { pH: { value: "soft" } } }], "water.pH"],
    ["a profile without an id", [{ water: { pH: { value: { kept: { min: 6 } } } } }], "water.pH"],
  ])("refuse %s", (_, profiles, path) => {
    expect(() => Reflect.apply(rangeColumns, undefined, [profiles, path])).toThrow(InvalidInputError);
  });
});
