import { expect, test } from "vitest";
import apistogramma from "vivary/catalog/apistogramma-cacatuoides";
import guppy from "vivary/catalog/poecilia-reticulata";
import { malesAreRivals } from "../../../src/compatibility/animals/males-are-rivals";
import { animal } from "../animals";

const known = { "space.territory": "none", "temperament.acts": [] } as const;

test("males that chase or bite their own sex or kind are rivals, and those that hold places", () => {
  expect(malesAreRivals(apistogramma)).toBe(true);
  for (const target of ["own-sex", "own-kind", "any"] as const)
    expect(malesAreRivals(animal("a", { ...known, "temperament.acts": [{ does: "chases", target }] }))).toBe(
      true,
    );
  expect(
    malesAreRivals(
      animal("a", { ...known, "space.territory": { holder: "male", zone: "bottom", area: 500 } }),
    ),
  ).toBe(true);
});

test("those that court alone are none, nor those whose females fight", () => {
  expect(malesAreRivals(guppy)).toBe(false);
  const females = { does: "chases", doer: "female", target: "own-sex" } as const;
  expect(malesAreRivals(animal("a", { ...known, "temperament.acts": [females] }))).toBe(false);
});

test("those that only take each other's food are none", () => {
  const robs = { does: "robs-food", target: "any" } as const;
  expect(malesAreRivals(animal("a", { ...known, "temperament.acts": [robs] }))).toBe(false);
});

test("those of which nobody knows are taken as rivals", () => {
  expect(malesAreRivals(animal("a", { "space.territory": "none" }))).toBe(true);
  expect(malesAreRivals(animal("a", { "temperament.acts": [] }))).toBe(true);
});
