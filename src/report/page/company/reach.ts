import { preyReach, thresholdValues } from "../../../compatibility/inner";
import type { SpeciesProfile } from "../../../species";

/** Up to which length a species may try to eat other fish, cm; undefined where none but fry are in danger. */
export function harmfulReach(profile: SpeciesProfile): number | undefined {
  const { tries = 0 } = preyReach(profile).find(({ kind }) => kind === "fish") ?? {};
  return tries > 2 * thresholdValues().youngFish ? tries : undefined;
}
