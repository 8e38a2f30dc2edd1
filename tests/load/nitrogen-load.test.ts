import fc from "fast-check";
import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { nitrogenLoad, nitrogenLoadDomain } from "../../src/load";

test("grows with the food", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (food) => {
      expect(nitrogenLoad({ food: food + 1 })).toBeGreaterThan(nitrogenLoad({ food }));
    }),
  );
  expect(nitrogenLoad({ food: 0 })).toBe(0);
});

test("counts 40 % of the food as protein where nothing is said", () => {
  expect(nitrogenLoad({ food: 1 })).toBe(nitrogenLoad({ food: 1, proteinShare: 0.4 }));
  expect(nitrogenLoad({ food: 1, proteinShare: undefined })).toBe(nitrogenLoad({ food: 1 }));
});

test.each([
  ["food", -1, "food: holds from 0 to 1000000 g/d, found -1 g/d"],
  ["food", 1e308, "food: holds from 0 to 1000000 g/d, found 1e+308 g/d"],
  ["proteinShare", 1.1, "proteinShare: holds from 0 to 1, found 1.1"],
] as const)("%s has a range of validity, which %d lies outside", (variable, value, message) => {
  const at = (number: number) => () => nitrogenLoad({ food: 1, [variable]: number });
  for (const end of Object.values(nitrogenLoadDomain[variable])) expect(at(end)).not.toThrow();
  expect(at(value)).toThrow(OutsideDomainError);
  expect(at(value)).toThrow(message);
  expect(at(Number.POSITIVE_INFINITY)).toThrow(InvalidInputError);
});
