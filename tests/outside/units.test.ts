import { expect, test } from "vitest";
import { convert, convertDifference, type Unit } from "../../src/units";
import { everyUnit } from "../units/every-unit";
import reference from "./fixtures/unit-factors.json";

// Sources, locators, tolerances and their reasons stand in the fixture, beside each value.
test.each(reference.amounts)("$what", ({ value, from, to, expected }) => {
  const converted = convert(value, from as Unit, to as Unit);
  for (const stated of expected) {
    expect(Math.abs(converted - stated.value), stated.source).toBeLessThanOrEqual(stated.tolerance);
  }
});

test.each(reference.differences)("$what", ({ value, from, to, expected }) => {
  const converted = convertDifference(value, from as Unit, to as Unit);
  for (const stated of expected) {
    expect(Math.abs(converted - stated.value), stated.source).toBeLessThanOrEqual(stated.tolerance);
  }
});

test("every unit that converts into another is compared with something outside", () => {
  const compared = new Set(reference.amounts.flatMap(({ from, to }) => [from, to]));
  const others = Object.values(everyUnit).filter((units) => units.length > 1);
  expect(others.flat().filter((unit) => !compared.has(unit))).toEqual([]);
});
