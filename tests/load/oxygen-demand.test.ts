import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { bodyMassDomain, oxygenDemand, oxygenDemandDomain } from "../../src/load";
import { masses } from "./arbitrary";

const temperatures = fc.double({ min: 0, max: 38, noNaN: true });

test("rises from rest to activity, with warmth and with mass, though less than mass does", () => {
  fc.assert(
    fc.property(masses, temperatures, (mass, temperature) => {
      const { resting, routine, active } = oxygenDemand({ mass, temperature });
      expect(routine).toBeGreaterThan(resting);
      expect(active).toBeGreaterThan(routine);
      expect(oxygenDemand({ mass, temperature: temperature + 1 }).resting).toBeGreaterThan(resting);
      const twice = oxygenDemand({ mass: 2 * mass, temperature }).resting;
      expect(twice).toBeGreaterThan(resting);
      expect(twice).toBeLessThan(2 * resting);
    }),
  );
});

test("lies within what species differ by, whatever the fish does", () => {
  fc.assert(
    fc.property(masses, temperatures, (mass, temperature) => {
      const { likely, ...typical } = oxygenDemand({ mass, temperature });
      for (const use of ["resting", "routine", "active"] as const) {
        expect(typical[use]).toBeGreaterThan(likely[use].min);
        expect(typical[use]).toBeLessThan(likely[use].max);
      }
    }),
  );
});

test("has a range of validity, and a mass", () => {
  const at = (temperature: number) => () => oxygenDemand({ mass: 1, temperature });
  for (const end of Object.values(oxygenDemandDomain.temperature)) expect(at(end)).not.toThrow();
  expect(at(40.1)).toThrow(OutsideDomainError);
  expect(at(-0.1)).toThrow("temperature: holds from 0 to 40 °C, found -0.1 °C");
  expect(at(Number.NaN)).toThrow(InvalidInputError);
  expect(() => oxygenDemand({ mass: 0, temperature: 20 })).toThrow(
    "mass: expected a number above zero, found 0",
  );
  const { a, b } = bodyMassDomain.lengthWeight;
  const heaviest = a.max * bodyMassDomain.length.max ** b.max;
  expect(oxygenDemandDomain.mass.max).toBe(heaviest);
  expect(() => oxygenDemand({ mass: heaviest, temperature: 20 })).not.toThrow();
  expect(() => oxygenDemand({ mass: 1e308, temperature: 20 })).toThrow(OutsideDomainError);
});
