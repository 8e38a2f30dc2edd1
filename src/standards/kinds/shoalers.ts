import { together } from "../comparing/together";
import { idsOf } from "../fishes/fish";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** Shoaling fish with their own kind: judged by the species of which there are fewest. */
export function shoalers({ fish }: SurveyedPlan): Comparison | undefined {
  const livingOf = (some: (typeof fish)[number]) => some.species.social?.living?.value;
  const shoaling = idsOf(fish.filter((some) => livingOf(some) === "shoal"));
  const unknown = idsOf(fish.filter((some) => livingOf(some) === undefined));
  const counts = shoaling.map((id) =>
    fish.reduce((sum, some) => sum + (some.species.id === id ? some.count : 0), 0),
  );
  if (counts.length > 0) return together(shoaling, Math.min(...counts));
  if (unknown.length === 0) return undefined;
  return {
    species: unknown,
    answer: "undetermined",
    open: { reason: "missing", trait: "social.living", species: unknown },
  };
}
