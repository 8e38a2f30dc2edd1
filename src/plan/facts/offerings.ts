import type { CheckedPlan } from "../checked-plan";
import type { Offering } from "../plan";
import type { TraitReader } from "./trait-reader";

/** The traits that tell which offerings a party takes. */
export const takenBy = ["diet.foods", "diet.reach", "diet.light"] as const;

/**
 * What the offerings that a party takes are like: their foods, places and hours, and `apart`. Unknown where the plan
 * says nothing of feeding, or nobody knows what, where or when the party feeds.
 */
export function offeringsFor(
  { offerings }: CheckedPlan,
  of: number,
  trait: TraitReader<(typeof takenBy)[number]>,
): readonly string[] | undefined {
  if (!offerings) return undefined;
  const foods = trait(of, "diet.foods");
  const places = trait(of, "diet.reach");
  const hours = trait(of, "diet.light");
  if (!foods || !places || !hours) return undefined;
  const eaten = offerings.filter(
    ({ food, place, light = "day" }) =>
      foods.includes(food) && places.includes(place) && hours.includes(light),
  );
  return [...new Set(eaten.flatMap(labels))];
}

const labels = ({ food, place, light = "day", apart = false }: Offering) =>
  apart ? [food, place, light, "apart"] : [food, place, light];
