import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { measureOf, type Unit } from "../../src/units";
import { everyUnit } from "./every-unit";

test.each(Object.entries(everyUnit))("%s has its units", (measure, units) => {
  for (const unit of units) expect(measureOf(unit), unit).toBe(measure);
});

test("no unit belongs to two measures", () => {
  const units = Object.values(everyUnit).flat();
  expect(new Set(units).size).toBe(units.length);
});

test.each(["", "litre", "constructor", "__proto__"])("%j is no unit", (unit) => {
  expect(() => measureOf(unit as Unit)).toThrow(InvalidInputError);
});
