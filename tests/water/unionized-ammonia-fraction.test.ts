import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { ammoniaDomain, unionizedAmmoniaFraction } from "../../src/water";

const temperature = fc.double({ min: 0, max: 49, noNaN: true });
const pH = fc.double({ min: 0, max: 13.9, noNaN: true });

test("is a share above 0 and below 1", () => {
  fc.assert(
    fc.property(temperature, pH, (t, acidity) => {
      const share = unionizedAmmoniaFraction({ temperature: t, pH: acidity });
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThan(1);
    }),
  );
});

test("rises with temperature and with pH", () => {
  fc.assert(
    fc.property(temperature, pH, (t, acidity) => {
      const share = unionizedAmmoniaFraction({ temperature: t, pH: acidity });
      expect(unionizedAmmoniaFraction({ temperature: t + 1, pH: acidity })).toBeGreaterThan(share);
      expect(unionizedAmmoniaFraction({ temperature: t, pH: acidity + 0.1 })).toBeGreaterThan(share);
    }),
  );
});

test.each(["temperature", "pH"] as const)("%s has a range of validity", (variable) => {
  const { min, max } = ammoniaDomain[variable];
  const at = (value: number) => () => unionizedAmmoniaFraction({ temperature: 25, pH: 7, [variable]: value });
  expect(at(min)).not.toThrow();
  expect(at(max)).not.toThrow();
  expect(at(min - 0.001)).toThrow(OutsideDomainError);
  expect(at(max + 0.001)).toThrow(new RegExp(`^${variable}: `));
  expect(at(Number.POSITIVE_INFINITY)).toThrow(InvalidInputError);
});
