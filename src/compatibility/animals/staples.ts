import { factAt, type SpeciesProfile, type TraitValue } from "../../species";

/** What a species eats. */
export type Foods = TraitValue<"diet.foods">;

type Diet = TraitValue<"diet.type">;

/**
 * The diets of which a food can be the whole: that of its own sort, and of dry food, which is made for its eater, all. Who
 * lives on animals and plants is fed by neither alone. Common practice, no source.
 */
const wholeOf: Readonly<Record<Foods[number], readonly Diet[]>> = {
  dry: ["herbivore", "omnivore", "carnivore", "detritivore"],
  frozen: ["carnivore"],
  live: ["carnivore"],
  plankton: ["omnivore", "carnivore"],
  "fallen-insects": ["carnivore"],
  insects: ["carnivore"],
  crustaceans: ["carnivore"],
  worms: ["carnivore"],
  molluscs: ["carnivore"],
  fish: ["carnivore"],
  algae: ["herbivore", "detritivore"],
  plants: ["herbivore"],
  wood: ["herbivore"],
  detritus: ["detritivore"],
};

/** The foods of a species that can be its whole diet; undefined where it is not known to take any. */
export function staplesOf(species: SpeciesProfile): Foods | undefined {
  const type = factAt(species, "diet.type")?.value;
  const taken = factAt(species, "diet.foods")?.value ?? [];
  const staples = taken.filter((food) => type && wholeOf[food].includes(type));
  return staples.length > 0 ? staples : undefined;
}
