import { filterCapacityDomain } from "../../load";
import { ripening } from "../../load/inner";
import type { Plan, PlannedFilter } from "../../plan";

/** Days after which plants that were set have grown in. Common practice, no source. */
const daysToGrowIn = 56;

/**
 * The day on which the filter is surely ripe, fed with ammonia until there are animals. A filter of which nobody says
 * how old it is runs since the first of the animals that are there, else since the first day.
 */
export const ripeOn = (plan: Plan): number => Math.max(0, ripening.max - ageOf(plan));

function ageOf({ tank: { filter }, groups }: Plan): number {
  return filter?.age ?? Math.max(0, ...groups.map(({ entersOn = 0 }) => -entersOn));
}

/**
 * The day on which the plants have grown in; undefined where none have still to. Plants of which nobody says anything are set
 * on the first day, whoever lives there: animals tell how old the filter is, and nothing of plants.
 */
export const grownInOn = ({ tank: { plants = "planted" } }: Plan): number | undefined =>
  plants === "planted" ? daysToGrowIn : undefined;

/** A filter so many days later. */
export const agedBy = ({ mediaArea, age }: PlannedFilter, days: number): PlannedFilter => ({
  mediaArea,
  age: Math.min(age + days, filterCapacityDomain.age.max),
});

/** What the tank of a plan is once it has ripened: what is to be different. What nobody says of it stays unsaid. */
export function ripened(plan: Plan): Partial<Pick<Plan["tank"], "filter" | "plants">> {
  const { filter, plants } = plan.tank;
  return {
    ...(filter && { filter: agedBy(filter, ripeOn(plan)) }),
    ...(plants === "planted" && { plants: "grown-in" }),
  };
}
