import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { densityDomain, waterDensity } from "../../src/water";

test("above its greatest density, at 4 °C, warmer water is lighter", () => {
  fc.assert(
    fc.property(fc.integer({ min: 4, max: 39 }), fc.integer({ min: 0, max: 42 }), (temperature, salinity) => {
      const cool = waterDensity({ temperature, salinity });
      expect(waterDensity({ temperature: temperature + 1, salinity })).toBeLessThan(cool);
    }),
  );
});

test("saltier water is heavier", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 41 }), (temperature, salinity) => {
      const fresher = waterDensity({ temperature, salinity });
      expect(waterDensity({ temperature, salinity: salinity + 1 })).toBeGreaterThan(fresher);
    }),
  );
});

test("salinity defaults to none", () => {
  const given = waterDensity({ temperature: 25, salinity: 0 });
  expect(waterDensity({ temperature: 25 })).toBe(given);
  expect(waterDensity({ temperature: 25, salinity: undefined })).toBe(given);
});

test.each(["temperature", "salinity"] as const)("%s has a range of validity", (variable) => {
  const { min, max } = densityDomain[variable];
  const at = (value: number) => () => waterDensity({ temperature: 25, [variable]: value });
  expect(at(min)).not.toThrow();
  expect(at(max)).not.toThrow();
  expect(at(min - 0.001)).toThrow(OutsideDomainError);
  expect(at(max + 0.001)).toThrow(new RegExp(`^${variable}: `));
  expect(at(Number.NaN)).toThrow(InvalidInputError);
});
