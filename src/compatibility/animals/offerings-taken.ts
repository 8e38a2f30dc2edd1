import type { Offering } from "../../plan";
import { factAt, type SpeciesProfile } from "../../species";
import { foods, lights, zones } from "../../species/inner";

/** Whether a species takes an offering: what, where and when it eats. */
export function takes(species: SpeciesProfile, { food, place, light = "day" }: Offering): boolean {
  const isOf = (path: "diet.foods" | "diet.reach" | "diet.light", word: string) =>
    factAt(species, path)?.value.some((one) => one === word) ?? false;
  return isOf("diet.foods", food) && isOf("diet.reach", place) && isOf("diet.light", light);
}

/**
 * All that some of these species take, the plainest first: freely before apart, by day before dusk and night, dry food
 * before others.
 */
export const offeringsTaken = (species: readonly SpeciesProfile[]): readonly Offering[] =>
  [false, true].flatMap((apart) =>
    lights.flatMap((light) =>
      foods.flatMap((food) =>
        zones
          .map((place): Offering => ({ food, place, light, ...(apart && { apart }) }))
          .filter((offering) => species.some((one) => takes(one, offering))),
      ),
    ),
  );
