import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPair, type Verdict } from "../../src/compatibility";
import { factAt, type Sex, type SpeciesProfile } from "../../src/species";
import { lengthsOfSex, sexes } from "../../src/species/inner";
import { someOf } from "../runs";

/** The greatest length in cm that animals of some sexes reach, each of them. */
const reachedBy = (species: SpeciesProfile, some: readonly Sex[]) =>
  Math.min(
    ...some.map((sex) =>
      Math.max(
        ...lengthsOfSex(factAt(species, "size.adultLength")?.value ?? [], sex).map(({ total }) => total.max),
      ),
    ),
  );

/** The least length in cm that the second of a pair is asked to have; undefined where none is. */
function lengthAsked({ conditions }: Verdict): number | undefined {
  const asked = conditions.find(({ on, of }) => on === "group.length" && of === 1);
  return asked && "min" in asked.wanted ? asked.wanted.min : undefined;
}

/** The sexes of which the second of a pair may be. */
function sexesLeft({ conditions }: Verdict): readonly Sex[] {
  const asked = conditions.find(({ on, of }) => on === "group.sex" && of === 1);
  const words: readonly unknown[] = asked && "oneOf" in asked.wanted ? asked.wanted.oneOf : sexes;
  return sexes.filter((sex) => words.includes(sex));
}

test("no animal is asked to be longer than its kind grows, nor than the sex does that is asked for", () => {
  const beyond: string[] = [];
  let asked = 0;
  for (const hunter of someOf(allSpecies, 60, 1))
    for (const species of allSpecies) {
      const verdict = assessPair({ species: hunter }, { species, stage: "juvenile" });
      const length = lengthAsked(verdict);
      if (length === undefined) continue;
      asked += 1;
      if (length > reachedBy(species, sexesLeft(verdict))) beyond.push(`${hunter.id}: ${species.id}`);
    }
  expect(beyond).toEqual([]);
  expect(asked).toBeGreaterThan(0);
});
