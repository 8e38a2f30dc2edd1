import { expect, test } from "vitest";
import { meant } from "../../../src/plan/shape/nearest";

const fields = ["cover", "height", "lid", "openWater", "sightBreaks"];

test.each([
  ["covr", " (cover?)"],
  ["Cover", " (cover?)"],
  ["heigth", " (height?)"],
  ["openwater", " (openWater?)"],
  ["sight-breaks", " (sightBreaks?)"],
  ["lit", " (lid?)"],
  ["xylophone", ""],
  ["", ""],
  [7, ""],
  [undefined, ""],
])("%j was meant to be%s", (given, text) => {
  expect(meant(given, fields)).toBe(text);
});

test("of an endless word, or where none is known, nothing was meant", () => {
  expect(meant("x".repeat(1_000_000), fields)).toBe("");
  expect(meant("cover", [])).toBe("");
});
