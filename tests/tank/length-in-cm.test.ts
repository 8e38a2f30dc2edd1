import { expect, test } from "vitest";
import { lengthInCm } from "../../src/tank";

test("a length in cm, whatever unit it comes in", () => {
  expect(lengthInCm(60, "height")).toBe(60);
  expect(lengthInCm(24, "height", "in")).toBe(60.96);
  expect(lengthInCm(24, "height", undefined)).toBe(24);
});

test("its bounds are a tenth of a millimetre and a kilometre, in every unit", () => {
  expect(lengthInCm(0.1, "height", "mm")).toBe(0.01);
  expect(lengthInCm(1_000, "height", "m")).toBe(100_000);
  expect(() => lengthInCm(0.099, "height", "mm")).toThrow(
    "height: expected a length of at least 0.1 mm, found 0.099",
  );
  expect(() => lengthInCm(1_000.1, "height", "m")).toThrow(
    "height: expected a length of at most 1 km, found 1000.1",
  );
});

test.each([0, -1, Number.NaN, Infinity, -1e308, "60", null, undefined, [60]])("%j is none", (value) => {
  expect(() => lengthInCm(value, "groups[1].length", "m")).toThrow(/^groups\[1\]\.length: /);
});
