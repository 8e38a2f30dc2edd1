import { describe, expect, test } from "vitest";
import { kinOf, mayHave } from "../../src/plan/kin";

describe("the animals of several groups of a species together", () => {
  test("are summed where every group knows its number", () => {
    expect(
      kinOf([
        { count: 4, males: 1, females: 3 },
        { count: 2, males: 2, females: 0 },
      ]),
    ).toEqual({
      count: 6,
      males: 3,
      females: 3,
      mayHave: { male: true, female: true },
    });
  });

  test("have no number where one group has none", () => {
    expect(kinOf([{ count: 4, males: 4, females: 0 }, { count: 6 }])).toEqual({
      count: 10,
      some: { male: 4 },
      mayHave: { male: true, female: true },
    });
    expect(kinOf([{}, { count: 6 }])).toEqual({ mayHave: { male: true, female: true } });
  });

  test("may be of one sex only", () => {
    expect(kinOf([{ count: 4, males: 4, females: 0 }, { sex: "male" }]).mayHave).toEqual({
      male: true,
      female: false,
    });
  });
});

test.each([
  ["nobody counted them", {}, true],
  ["they are of that sex", { sex: "female" as const }, true],
  ["they are of the other", { sex: "male" as const }, false],
  ["there are some", { females: 2 }, true],
  ["there are none", { females: 0 }, false],
  ["there are none, whatever the sex of the others", { sex: "female" as const, females: 0 }, false],
])("females are possible if %s: %#", (_, party, possible) => {
  expect(mayHave(party, "female")).toBe(possible);
});
