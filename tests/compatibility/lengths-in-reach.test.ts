import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPair, type Verdict } from "../../src/compatibility";
import { factAt, type Sex, type SpeciesProfile } from "../../src/species";
import { lengthsOfSex } from "../../src/species/inner";
import { someSpecies } from "../drawn";

/** The greatest length in cm that a sex of a species reaches. */
const reachedBy = (species: SpeciesProfile, sex: Sex) =>
  Math.max(
    ...lengthsOfSex(factAt(species, "size.adultLength")?.value ?? [], sex).map(({ total }) => total.max),
  );

/** The least length in cm that the second of a pair is asked to have; undefined where none is. */
function lengthAsked({ conditions }: Verdict): number | undefined {
  const asked = conditions.find(({ on, of }) => on === "group.length" && of === 1);
  return asked && "min" in asked.wanted ? asked.wanted.min : undefined;
}

/** What is asked of the second of every pair whose length is asked, with how long either sex grows. */
const askedOf = (stage: "adult" | "juvenile", hunters: readonly SpeciesProfile[]) =>
  hunters.flatMap((hunter) =>
    allSpecies.flatMap((species) => {
      const length = lengthAsked(assessPair({ species: hunter }, { species, stage }));
      const [male, female] = [reachedBy(species, "male"), reachedBy(species, "female")];
      return length === undefined ? [] : [{ name: `${hunter.id}: ${species.id}`, length, male, female }];
    }),
  );

test("no young are asked to be longer than their kind grows", () => {
  const asked = askedOf("juvenile", someSpecies(60, 1));
  expect(asked.filter(({ length, male, female }) => length > Math.max(male, female))).toEqual([]);
  expect(asked.length).toBeGreaterThan(0);
});

test("no grown animals are asked to be longer than their males grow: females are asked for", () => {
  const asked = askedOf("adult", someSpecies(200, 0));
  expect(asked.filter(({ length, male }) => length > male)).toEqual([]);
});
