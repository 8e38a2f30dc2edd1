import { expect, test } from "vitest";
import { lengthInCm } from "../../src/tank";

test("a length in cm, whatever unit it comes in", () => {
  expect(lengthInCm(60)).toBe(60);
  expect(lengthInCm(24, "in")).toBe(60.96);
  expect(lengthInCm(24, undefined, "height")).toBe(24);
});

test("its bounds are a tenth of a millimetre and a kilometre, in every unit", () => {
  expect(lengthInCm(0.1, "mm", "height")).toBe(0.01);
  expect(lengthInCm(1_000, "m", "height")).toBe(100_000);
  expect(() => lengthInCm(0.099, "mm", "height")).toThrow(
    "height: expected a length of at least 0.1 mm, found 0.099",
  );
  expect(() => lengthInCm(1_000.1, "m", "height")).toThrow(
    "height: expected a length of at most 1 km, found 1000.1",
  );
});

test.each([0, -1, Number.NaN, Infinity, -1e308, "60", null, undefined, [60]])("%j is none", (value) => {
  expect(() => lengthInCm(value as number, "m", "groups[1].length")).toThrow(/^groups\[1\]\.length: /);
});

test("its unit is one of length, and its subject a text", () => {
  // @ts-expect-error: no unit of ours
  expect(() => lengthInCm(60, "yd")).toThrow('unit: expected one of mm, cm, m, in, ft, found "yd"');
  // @ts-expect-error: no text
  expect(() => lengthInCm(60, "cm", 7)).toThrow("subject: expected a text, found 7");
  expect(() => lengthInCm(0)).toThrow(/^length: /);
});
