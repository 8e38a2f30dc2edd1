import type { AssessedPlan } from "./assessed-plan";
import { certain } from "./company";
import type { AssessedParty } from "./party";
import type { Offering } from "./plan";

/**
 * What the offerings that a party takes are like: their foods, places and hours, and `apart`. Unknown where the plan
 * says nothing of feeding, or nobody knows what, where or when the party feeds.
 */
export function offeringsFor({ species }: AssessedParty, plan: AssessedPlan): readonly string[] | undefined {
  const { foods, reach, light } = species.diet ?? {};
  const [taken, places, hours] = [certain(foods), certain(reach), certain(light)];
  if (!plan.offerings || !taken || !places || !hours) return undefined;
  const eaten = plan.offerings.filter(
    (offering) =>
      taken.includes(offering.food) &&
      places.includes(offering.place) &&
      hours.includes(offering.light ?? "day"),
  );
  return [...new Set(eaten.flatMap(labels))];
}

const labels = ({ food, place, light = "day", apart = false }: Offering) =>
  apart ? [food, place, light, "apart"] : [food, place, light];
