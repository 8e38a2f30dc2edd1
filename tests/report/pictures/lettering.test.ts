import { expect, test } from "vitest";
import { fitted, linesOf, widthOf } from "../../../src/report/pictures/lettering";

test("wide letters are taken to be wider than narrow ones, marks above letters to take no room", () => {
  expect(widthOf("mm", 12)).toBeGreaterThan(widthOf("ii", 12));
  expect(widthOf("e\u0301", 12)).toBe(widthOf("e", 12));
  expect(widthOf("鱼", 12)).toBeGreaterThan(widthOf("a", 12));
});

test("text that fits stays as it is, other text ends in dots and fits", () => {
  expect(fitted("guppy", widthOf("guppy", 12), 12)).toBe("guppy");
  const short = fitted("a very long name of a fish", 80, 12);
  expect(short).toMatch(/^a very.*…$/);
  expect(widthOf(short, 12)).toBeLessThanOrEqual(80);
});

test("a sentence breaks between words, every line fits, and no word is lost", () => {
  const text = "Nothing is common to all: the warm fish and the cold fish lie apart.";
  const lines = linesOf(text, 120, 12);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.join(" ")).toBe(text);
  for (const line of lines) expect(widthOf(line, 12)).toBeLessThanOrEqual(120);
});
