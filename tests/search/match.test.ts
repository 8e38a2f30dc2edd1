import { describe, expect, test } from "vitest";
import { nearMatchOf, ranked, searched, typedIn } from "../../src/search/match";

describe("misspelt names of as many slips come in an order", () => {
  const typed = typedIn("angelfsh");
  const near = (name: string, as: Parameters<typeof nearMatchOf>[2]) => {
    const match = nearMatchOf(typed, searched(name), as);
    if (!match) throw new Error(name);
    return match;
  };

  test.each([
    [
      "a name that begins so",
      "before one in which a later word does",
      "angelfish",
      "vernacular",
      "marble angelfish",
      "vernacular",
    ],
    ["a later word of a name", "before a form", "marble angelfish", "vernacular", "angelfish", "form"],
    [
      "a later word of a form",
      "before a name that science gave up",
      "marble angelfish",
      "form",
      "angelfish",
      "synonym",
    ],
  ] as const)("%s %s", (_, __, first, as, second, other) => {
    expect(near(first, as).rank).toBe(near(second, other).rank);
    expect(ranked(near(first, as), near(second, other))).toBeLessThan(0);
  });
});
