import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { carbonDioxide, carbonDioxideDomain } from "../../src/water";

const temperature = fc.integer({ min: 5, max: 35 });
const pH = fc.integer({ min: 60, max: 84 }).map((tenths) => tenths / 10);
const carbonateHardness = fc.integer({ min: 2, max: 15 });

test("is proportional to carbonate hardness, but for the few ions of water itself (1 %)", () => {
  fc.assert(
    fc.property(temperature, pH, carbonateHardness, (t, acidity, hardness) => {
      const single = carbonDioxide({ temperature: t, pH: acidity, carbonateHardness: hardness });
      const double = carbonDioxide({ temperature: t, pH: acidity, carbonateHardness: 2 * hardness });
      expect(Math.abs(double / single - 2)).toBeLessThan(0.02);
    }),
  );
});

test("every degree of hardness adds the same", () => {
  fc.assert(
    fc.property(temperature, pH, carbonateHardness, (t, acidity, hardness) => {
      const at = (h: number) => carbonDioxide({ temperature: t, pH: acidity, carbonateHardness: h });
      expect(at(hardness + 1) - at(hardness)).toBeCloseTo(at(3) - at(2), 9);
    }),
  );
});

test("falls as pH rises, about tenfold for one pH", () => {
  fc.assert(
    fc.property(temperature, pH, carbonateHardness, (t, acidity, hardness) => {
      const before = carbonDioxide({ temperature: t, pH: acidity, carbonateHardness: hardness });
      const after = carbonDioxide({ temperature: t, pH: acidity + 1, carbonateHardness: hardness });
      expect(before / after).toBeGreaterThan(9.9);
      expect(before / after).toBeLessThan(15);
    }),
  );
});

test("is zero where hydroxide alone accounts for the hardness", () => {
  expect(carbonDioxide({ temperature: 25, pH: 9, carbonateHardness: 0 })).toBe(0);
});

test("is what the acidity of pure water with carbon dioxide tells where there is no hardness", () => {
  // [HCO3-] = [H+] = 1e-5 mol/L; K1 = 10^-6.352 at 25 °C (Plummer & Busenberg 1982): 9.9 mg/L.
  const found = carbonDioxide({ temperature: 25, pH: 5, carbonateHardness: 0 });
  expect(found).toBeCloseTo(10 ** -10 * 10 ** 6.352 * 44_009.5, 1);
});

const variables = ["temperature", "pH", "carbonateHardness", "salinity"] as const;

test("has no answer for brackish water", () => {
  const of = (salinity: number) => () =>
    carbonDioxide({ temperature: 25, pH: 8, carbonateHardness: 8, salinity });
  expect(of(5)).toThrow(new OutsideDomainError("salinity", { min: 0, max: 0.5 }, 5, "g/kg"));
  expect(of(5)).toThrow(RangeError);
  expect(of(0.5)()).toBe(carbonDioxide({ temperature: 25, pH: 8, carbonateHardness: 8 }));
});

test.each(variables)("%s has a range of validity", (variable) => {
  const { min, max } = carbonDioxideDomain[variable];
  const at = (value: number) => () =>
    carbonDioxide({ temperature: 25, pH: 7, carbonateHardness: 4, [variable]: value });
  expect(at(min)).not.toThrow();
  expect(at(max)).not.toThrow();
  expect(at(min - 0.001)).toThrow(OutsideDomainError);
  expect(at(max + 0.001)).toThrow(new RegExp(`^${variable}: `));
  expect(at(Number.NaN)).toThrow(InvalidInputError);
});
