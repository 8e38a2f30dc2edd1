import { expect, test } from "vitest";
import { guess, nearest } from "../../../data/reading/spelling";

const kinds = ["fish", "shrimp", "crayfish", "crab", "snail"];

test.each([
  ["fihs", "fish"],
  ["Shrimp", "shrimp"],
  ["shrimps", "shrimp"],
  ["crayfihs", "crayfish"],
  ["newt", undefined],
  ["", undefined],
])("%o means %o", (typed, meant) => {
  expect(nearest(typed, kinds)).toBe(meant);
  expect(guess(typed, kinds)).toBe(meant === undefined ? "" : ` Did you mean ${meant}?`);
});

test("a word is no guess for itself, and no further away than is said", () => {
  expect(nearest("crab", ["crab"])).toBeUndefined();
  expect(nearest("crbb", ["crab"], 0)).toBeUndefined();
});
