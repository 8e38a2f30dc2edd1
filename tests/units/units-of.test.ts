import { expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { type Measure, unitsOf } from "../../src/units";
import { everyUnit } from "./every-unit";

test.each(Object.entries(everyUnit))("the units of %s", (measure, units) => {
  expect(unitsOf(measure as Measure)).toEqual(units);
});

test("a list of units is the caller's own", () => {
  unitsOf("length").push("ft");
  expect(unitsOf("length")).toEqual(everyUnit.length);
});

test.each(["", "weight", "constructor", "__proto__", undefined, null, 7])("%j is no measure", (measure) => {
  expect(() => unitsOf(measure as Measure)).toThrow(InvalidInputError);
});
