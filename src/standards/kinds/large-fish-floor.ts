import { compared } from "../comparing/compared";
import { type Fish, idsOf } from "../fishes/fish";
import { largeFish } from "../fishes/large";
import { missingLength } from "../fishes/missing";
import type { OfKind } from "../jurisdiction";
import type { Asked, Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** A floor for two large fish, as for one, and more for each further. */
export function largeFishFloor(
  { longerThan, taxa, forTwo, eachMore }: OfKind<"large-fish-floor">,
  { fish, measures }: SurveyedPlan,
): Comparison | undefined {
  const { possibly, surely } = largeFish(fish, longerThan, taxa);
  if (possibly.length === 0) return undefined;
  const floorFor = (large: readonly Fish[]) => {
    const count = large.reduce((sum, some) => sum + some.count, 0);
    return count === 0 ? 0 : forTwo + Math.max(0, count - 2) * eachMore;
  };
  const unknown = missingLength(
    possibly.filter((some) => !surely.includes(some)),
    "adult total length",
  );
  const asked: Asked = {
    min: floorFor(surely),
    ...(!unknown && { max: floorFor(possibly) }),
    unit: "m2",
    by: "adult total length",
  };
  return { species: idsOf(possibly), ...compared(asked, measures("floor"), unknown) };
}
