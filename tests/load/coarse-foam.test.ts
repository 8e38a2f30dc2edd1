import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { coarseFoamDomain, filterCapacity, foamArea, foamVolume } from "../../src/load";

test("a litre of coarse foam has a square metre at least", () => {
  expect(foamArea({ volume: 1 })).toEqual({ min: 1, max: 1.6 });
  expect(foamArea({ volume: 0 })).toEqual({ min: 0, max: 0 });
});

test("as much foam as a surface needs at most has that surface", () => {
  const area = fc.double({ min: 0, max: 1_000_000, noNaN: true });
  fc.assert(
    fc.property(area, (mediaArea) => {
      const { min, max } = foamVolume({ mediaArea });
      const rounding = 1e-11 * Math.max(1, mediaArea); // Figures are given to twelve digits.
      expect(Math.abs(foamArea({ volume: max }).min - mediaArea)).toBeLessThanOrEqual(rounding);
      expect(Math.abs(foamArea({ volume: min }).max - mediaArea)).toBeLessThanOrEqual(rounding);
      expect(min).toBeLessThanOrEqual(max);
    }),
  );
});

test("what a keeper has of foam is what a filter is reckoned from", () => {
  const [two, three] = [2, 3].map((volume) => foamArea({ volume }).min);
  const grown = (mediaArea = 0) => filterCapacity({ mediaArea, age: 90 }).min;
  expect(grown(three)).toBeGreaterThan(grown(two));
});

test.each([
  ["volume", -1, "volume: holds from 0 to 10000000 L, found -1 L"],
  ["mediaArea", 1e308, "mediaArea: holds from 0 to 10000000 m², found 1e+308 m²"],
] as const)("%s has a range of validity, which %d lies outside", (variable, value, message) => {
  const at = (number: number) => () =>
    variable === "volume" ? foamArea({ volume: number }) : foamVolume({ mediaArea: number });
  for (const end of Object.values(coarseFoamDomain[variable])) expect(at(end)).not.toThrow();
  expect(at(value)).toThrow(OutsideDomainError);
  expect(at(value)).toThrow(message);
  expect(at(Number.NaN)).toThrow(InvalidInputError);
});

test.each([null, 2, {}, { volume: 1, mediaArea: 1 }, { volume: "1" }])("%j is refused", (given) => {
  expect(() => foamArea(given as never)).toThrow(InvalidInputError);
  expect(() => foamVolume(given as never)).toThrow(InvalidInputError);
});
