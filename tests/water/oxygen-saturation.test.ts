import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { oxygenDomain, oxygenSaturation } from "../../src/water";

const temperature = fc.integer({ min: 0, max: 39 });
const salinity = fc.integer({ min: 0, max: 39 });
const pressure = fc.integer({ min: 51, max: 110 });

test("warmer water holds less", () => {
  fc.assert(
    fc.property(temperature, salinity, pressure, (t, s, p) => {
      const cool = oxygenSaturation({ temperature: t, salinity: s, pressure: p });
      expect(oxygenSaturation({ temperature: t + 1, salinity: s, pressure: p })).toBeLessThan(cool);
    }),
  );
});

test("saltier water holds less", () => {
  fc.assert(
    fc.property(temperature, salinity, pressure, (t, s, p) => {
      const fresher = oxygenSaturation({ temperature: t, salinity: s, pressure: p });
      expect(oxygenSaturation({ temperature: t, salinity: s + 1, pressure: p })).toBeLessThan(fresher);
    }),
  );
});

test("water under more pressure holds more", () => {
  fc.assert(
    fc.property(temperature, salinity, pressure, (t, s, p) => {
      const less = oxygenSaturation({ temperature: t, salinity: s, pressure: p });
      expect(oxygenSaturation({ temperature: t, salinity: s, pressure: p + 1 })).toBeGreaterThan(less);
    }),
  );
});

test("salinity defaults to none and pressure to one atmosphere", () => {
  const given = oxygenSaturation({ temperature: 25, salinity: 0, pressure: 101.325 });
  expect(oxygenSaturation({ temperature: 25 })).toBe(given);
  expect(oxygenSaturation({ temperature: 25, salinity: undefined, pressure: undefined })).toBe(given);
});

test.each(["temperature", "salinity", "pressure"] as const)("%s has a range of validity", (variable) => {
  const { min, max } = oxygenDomain[variable];
  const at = (value: number) => () => oxygenSaturation({ temperature: 25, [variable]: value });
  expect(at(min)).not.toThrow();
  expect(at(max)).not.toThrow();
  expect(at(min - 0.001)).toThrow(OutsideDomainError);
  expect(at(max + 0.001)).toThrow(new RegExp(`^${variable}: `));
  expect(at(Number.NaN)).toThrow(InvalidInputError);
});
