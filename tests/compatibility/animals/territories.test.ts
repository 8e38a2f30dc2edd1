import { describe, expect, test } from "vitest";
import { claimsOf, numberOfSex } from "../../../src/compatibility/animals/territories";
import { kinOf } from "../../../src/plan/kin";

const claims = (
  holder: Parameters<typeof claimsOf>[0]["holder"],
  animals: Parameters<typeof kinOf>[0][number],
) => claimsOf({ holder }, kinOf([animals]));

test("of unknown sex half count as of one, and both of two", () => {
  const males = (count: number) => numberOfSex("male", { count, mayHave: { male: true, female: true } });
  expect([1, 2, 3, 5, 6].map(males)).toEqual([1, 2, 2, 3, 3]);
});

describe("a place", () => {
  const sexed = { count: 5, males: 2, females: 3 };
  const females = { count: 4, males: 0, females: 4, sex: "female" } as const;

  test("is held by each, each male or each female", () => {
    expect(claims("each", sexed)).toBe(5);
    expect(claims("male", sexed)).toBe(2);
    expect(claims("female", sexed)).toBe(3);
    expect(claims("male", females)).toBe(0);
  });

  test("is held by half of those whose sex nobody knows, and by none of the other sex", () => {
    expect(claims("male", { count: 6 })).toBe(3);
    expect(claims("male", { count: 6, sex: "female" })).toBe(0);
    expect(claims("female", { count: 6, sex: "female" })).toBe(3);
  });

  test("is held by pairs, as many as there are of the rarer sex", () => {
    expect(claims("pair", sexed)).toBe(2);
    expect(claims("pair", { count: 7 })).toBe(3);
    expect(claims("pair", { count: 1 })).toBe(0);
    expect(claims("pair", females)).toBe(0);
  });

  test("is one where nobody says how many there are", () => {
    for (const holder of ["each", "male", "female", "pair"] as const) expect(claims(holder, {})).toBe(1);
  });
});
