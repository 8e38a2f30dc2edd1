import { together } from "../comparing/together";
import { idsOf } from "../fishes/fish";
import type { Comparison } from "../official-requirement";
import type { SurveyedPlan } from "../surveyed-plan";

/** Shoaling fish with their own kind: of species of which there is one alone, that it is; else of all of them. */
export function shoalers({ fish }: SurveyedPlan): Comparison | undefined {
  const livingOf = (some: (typeof fish)[number]) => some.species.social?.living?.value;
  const shoaling = idsOf(fish.filter((some) => livingOf(some) === "shoal"));
  const unknown = idsOf(fish.filter((some) => livingOf(some) === undefined));
  const countOf = (id: string) =>
    fish.reduce((sum, some) => sum + (some.species.id === id ? some.count : 0), 0);
  const alone = shoaling.filter((id) => countOf(id) === 1);
  const told = alone.length > 0 ? alone : shoaling;
  if (told.length > 0) return together(told, told.map(countOf));
  if (unknown.length === 0) return undefined;
  return {
    species: unknown,
    answer: "undetermined",
    open: { reason: "missing", trait: "social.living", species: unknown },
  };
}
