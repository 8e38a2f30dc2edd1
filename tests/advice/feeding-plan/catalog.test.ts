import fc from "fast-check";
import { expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { feedingPlan } from "../../../src/advice";
import type { Group } from "../../../src/plan";
import { factAt, type SpeciesProfile, type TraitValue } from "../../../src/species";
import { planOf } from "../../compatibility/judging";
import { anySpecies } from "../../drawn";
import { runs } from "../../runs";

const meat = "frozen live fallen-insects insects crustaceans worms molluscs fish".split(" ");
const greens = "algae plants wood detritus".split(" ");

/** What alone does not feed those that live on something else. */
const notEnough: Readonly<Record<TraitValue<"diet.type">, readonly string[]>> = {
  herbivore: [...meat, "plankton", "detritus"],
  omnivore: [...meat, ...greens],
  carnivore: greens,
  detritivore: [...meat, "plankton", "plants", "wood"],
};

const fedIn = (groups: readonly Group[]) =>
  feedingPlan(planOf(groups, { tank: { base: { shape: "rectangle", length: 150, width: 50 } } }));

/** Those that live on none of the foods that they get, though they are known to take one that would do. */
function starved(groups: readonly Group[]): readonly string[] {
  const found = fedIn(groups);
  return groups.flatMap(({ species }, of) => {
    const [type, foods] = [factAt(species, "diet.type")?.value, factAt(species, "diet.foods")?.value ?? []];
    const poor = type ? notEnough[type] : [];
    const got = (found.groups[of]?.offerings ?? []).flatMap((index) => found.offerings[index]?.food ?? []);
    const isPoor = got.length > 0 && got.every((food) => poor.includes(food));
    return isPoor && foods.some((food) => !poor.includes(food)) ? [`${species.id}: ${got}`] : [];
  });
}

const several = (species: SpeciesProfile): Group => ({ species, unsexed: 3 });

test("every species alone gets a food that it lives on", () => {
  expect(allSpecies.flatMap((species) => starved([several(species)]))).toEqual([]);
});

test("so does each of two", () => {
  fc.assert(
    fc.property(anySpecies, anySpecies, (one, other) => {
      expect(starved([several(one), several(other)])).toEqual([]);
    }),
    { numRuns: runs(200) },
  );
});

test("an oscar is not fed on the greens of a sailfin pleco", () => {
  const groups = ["astronotus-ocellatus", "pterygoplichthys-gibbiceps"].flatMap((id) => {
    const species = speciesById(id);
    return species ? [{ species, unsexed: 1 }] : [];
  });
  const { offerings, unreached } = fedIn(groups);
  expect(unreached).toEqual([]);
  expect(offerings.filter(({ reaches }) => reaches.includes(0)).map(({ food }) => food)).toEqual(["dry"]);
  expect(
    offerings.some(({ food, reaches }) => notEnough.carnivore.includes(food) && reaches.includes(1)),
  ).toBe(true);
});
