import { expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { filterCapacity, filterCapacityDomain } from "../../src/load";

test("a filter ripens between one week and eight", () => {
  const at = (age: number) => filterCapacity({ mediaArea: 1, age });
  expect(at(6)).toEqual({ min: 0, max: 0 });
  expect(at(7)).toEqual({ min: 0, max: 100 });
  expect(at(55).min).toBe(0);
  expect(at(56)).toEqual({ min: 20, max: 100 });
});

test.each([
  ["mediaArea", -1, "mediaArea: holds from 0 to 1000000 m², found -1 m²"],
  ["mediaArea", 1e308, "mediaArea: holds from 0 to 1000000 m², found 1e+308 m²"],
  ["age", -1, "age: holds from 0 to 36525 d, found -1 d"],
] as const)("%s has a range of validity, which %d lies outside", (variable, value, message) => {
  const at = (number: number) => () => filterCapacity({ mediaArea: 1, age: 60, [variable]: number });
  for (const end of Object.values(filterCapacityDomain[variable])) expect(at(end)).not.toThrow();
  expect(at(value)).toThrow(OutsideDomainError);
  expect(at(value)).toThrow(message);
  expect(at(Number.NaN)).toThrow(InvalidInputError);
});
