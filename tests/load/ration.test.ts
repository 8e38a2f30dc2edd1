import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { ration } from "../../src/load";
import { masses } from "./arbitrary";

test("upkeep is less than plenty, and plenty a smaller share of a larger fish", () => {
  fc.assert(
    fc.property(masses, (mass) => {
      const { min, max } = ration({ mass });
      expect(min).toBeGreaterThan(0);
      expect(max).toBeGreaterThan(min);
      expect(ration({ mass: 2 * mass }).max / (2 * mass)).toBeLessThan(max / mass);
    }),
  );
});

test("warmth raises upkeep, and nowhere above plenty, which cold lessens", () => {
  const temperatures = fc.double({ min: 0, max: 39, noNaN: true });
  fc.assert(
    fc.property(masses, temperatures, (mass, temperature) => {
      const [here, warmer] = [ration({ mass, temperature }), ration({ mass, temperature: temperature + 1 })];
      expect(warmer.min).toBeGreaterThan(here.min);
      if (temperature >= 27) expect(warmer.max).toBe(here.max);
      else expect(warmer.max).toBeGreaterThan(here.max);
      expect(warmer.max).toBeGreaterThan(warmer.min);
    }),
  );
  expect(ration({ mass: 1 })).toEqual(ration({ mass: 1, temperature: 27 }));
});

test("there is none for no fish, nor in ice", () => {
  expect(() => ration({ mass: -1 })).toThrow("mass: expected a number above zero, found -1");
  expect(() => ration({ mass: 1, temperature: Number.NaN })).toThrow(InvalidInputError);
  expect(() => ration({ mass: 1, temperature: -0.1 })).toThrow(OutsideDomainError);
  expect(() => ration({ mass: 1e308 })).toThrow(OutsideDomainError);
});
