import { expect, expectTypeOf, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { type RangePath, rangeColumns } from "../../../src/ranges";
import { type FigurePath, figurePaths, type SpeciesProfile } from "../../../src/species";

test("what says in figures what water is are all traits of which profiles hold a span to keep within", () => {
  expectTypeOf<FigurePath>().toEqualTypeOf<RangePath<SpeciesProfile>>();
  expect(figurePaths).toEqual([
    "water.temperature",
    "water.pH",
    "water.generalHardness",
    "water.carbonateHardness",
    "water.salinity",
  ]);
  for (const path of figurePaths)
    expect(rangeColumns(allSpecies, path).min.some(Number.isFinite), path).toBe(true);
});
