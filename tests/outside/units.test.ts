import { expect, test } from "vitest";
import { convert, convertDifference, type Unit } from "../../src/units";
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
