import type { Group } from "../../../plan";
import { factAt, type SpeciesProfile } from "../../../species";

/** Whether it is known how many of a species belong together at least. */
export function isGroupKnown(species: SpeciesProfile): boolean {
  const living = factAt(species, "social.living")?.value;
  if (living === "alone" || living === "pair") return true;
  return living !== undefined && factAt(species, "social.group") !== undefined;
}

/** As many of a species as belong together, in the sexes that a keeper would choose. */
export function usualGroup(species: SpeciesProfile): Group {
  const living = factAt(species, "social.living")?.value;
  const least = factAt(species, "social.group")?.value.least ?? 1;
  const each = factAt(species, "social.femalesPerMale")?.value ?? 0;
  if (living === "pair") return { species, males: 1, females: 1 };
  if (living === "alone") return { species, unsexed: 1 };
  if (living !== "harem" && each === 0) return { species, unsexed: least };
  const ofEach = Math.max(1, each);
  const males = Math.max(1, Math.floor(least / (1 + ofEach)));
  return { species, males, females: Math.max(Math.ceil(males * ofEach), least - males) };
}
