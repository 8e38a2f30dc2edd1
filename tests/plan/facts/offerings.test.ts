import { describe, expect, test } from "vitest";
import { isMet, type Offering } from "../../../src/plan";
import { animal } from "../../compatibility/animals";

const traits = {
  "diet.foods": ["dry", "live"],
  "diet.reach": ["bottom"],
  "diet.light": ["night"],
} as const;

const fed = (wanted: string, offerings: readonly Offering[] | undefined, known: object = traits) =>
  isMet(
    { on: "group.offerings", of: 0, wanted: { oneOf: [wanted] } },
    {
      tank: { base: { shape: "rectangle", length: 100, width: 40 } },
      groups: [{ species: animal("catfish", known), unsexed: 6 }],
      offerings,
    },
  );

describe("a night feeder of the ground takes", () => {
  const meal: Offering = { food: "dry", place: "bottom", light: "night" };

  test("its food where and when it feeds", () => {
    for (const word of ["dry", "bottom", "night"]) expect(fed(word, [meal])).toBe(true);
    expect(fed("apart", [meal])).toBe(false);
    expect(fed("apart", [{ ...meal, apart: true }])).toBe(true);
  });

  test.each([
    ["other food", { ...meal, food: "frozen" as const }],
    ["food elsewhere", { ...meal, place: "surface" as const }],
    ["food by day", { ...meal, light: "day" as const }],
    ["food at no time told, which is by day", { food: "dry" as const, place: "bottom" as const }],
  ])("no %s", (_, offering) => {
    expect(fed("dry", [offering])).toBe(false);
  });

  test("one meal of several", () => {
    expect(fed("dry", [{ food: "dry", place: "surface" }, meal])).toBe(true);
  });

  test("nothing, if nothing is given, and who knows what, if nobody says", () => {
    expect(fed("dry", [])).toBe(false);
    expect(fed("dry", undefined)).toBeUndefined();
  });

  test.each(Object.keys(traits))("who knows what, if nobody knows its %s", (path) => {
    const known = Object.fromEntries(Object.entries(traits).filter(([name]) => name !== path));
    expect(fed("dry", [meal], known)).toBeUndefined();
  });
});
