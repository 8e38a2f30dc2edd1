import { expect, test } from "vitest";
import { offeringsTaken, takes } from "../../../src/compatibility/animals/offerings-taken";
import { staplesOf } from "../../../src/compatibility/animals/staples";
import { animal } from "../animals";

const grazer = animal("grazer", {
  "diet.type": "herbivore",
  "diet.foods": ["algae", "frozen"],
  "diet.reach": ["bottom"],
  "diet.light": ["night"],
});
const hunter = animal("hunter", {
  "diet.type": "carnivore",
  "diet.foods": ["frozen"],
  "diet.reach": ["surface"],
  "diet.light": ["day"],
});

test("an offering is taken where food, place and hour are those of the species", () => {
  const algae = { food: "algae", place: "bottom", light: "night" } as const;
  expect(takes(grazer, algae)).toBe(true);
  expect(takes(grazer, { ...algae, food: "dry" })).toBe(false);
  expect(takes(grazer, { ...algae, place: "midwater" })).toBe(false);
  expect(takes(grazer, { food: "algae", place: "bottom" })).toBe(false);
  expect(takes(hunter, { food: "frozen", place: "surface" })).toBe(true);
});

test("of several species every offering counts that one of them takes, freely and by day first", () => {
  expect(offeringsTaken([grazer, hunter])).toEqual([
    { food: "frozen", place: "surface", light: "day" },
    { food: "frozen", place: "bottom", light: "night" },
    { food: "algae", place: "bottom", light: "night" },
    { food: "frozen", place: "surface", light: "day", apart: true },
    { food: "frozen", place: "bottom", light: "night", apart: true },
    { food: "algae", place: "bottom", light: "night", apart: true },
  ]);
});

test("what can be the whole diet is of its sort; without any there is no such list", () => {
  expect(staplesOf(grazer)).toEqual(["algae"]);
  expect(staplesOf(hunter)).toEqual(["frozen"]);
  expect(
    staplesOf(animal("omnivore", { "diet.type": "omnivore", "diet.foods": ["frozen"] })),
  ).toBeUndefined();
  expect(staplesOf(animal("untold", { "diet.foods": ["dry"] }))).toBeUndefined();
});
