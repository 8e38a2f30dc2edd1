import { describe, expect, test } from "vitest";
import { frozen } from "../src/frozen";
import { remembered } from "../src/remembered";

describe("what is made of something", () => {
  const copied = remembered((given: { readonly held: { count: number } }) => ({ ...given.held }));

  test("is made once where nobody can change that", () => {
    const given = frozen({ held: { count: 1 } });
    expect(copied(given)).toBe(copied(given));
  });

  test("is made anew where a part of it can be changed", () => {
    const given = Object.freeze({ held: { count: 1 } });
    const before = copied(given);
    given.held.count = 2;
    expect([before, copied(given)]).toEqual([{ count: 1 }, { count: 2 }]);
  });
});
