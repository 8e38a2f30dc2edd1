import { type KeptWater, keptWater, waterAxes } from "../../compatibility/inner";
import { refusal } from "../../errors";
import { profilesOf } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";
import type { PerAxis } from "./answer";
import type { Terms } from "./terms";

/** A species of a list, with what its water may be. */
export interface Animal {
  readonly place: number;
  readonly profile: SpeciesProfile;
  readonly waters: PerAxis<KeptWater | undefined>;
}

/** The species of a list, or an InvalidInputError where it holds none or what is no profile. */
export function animalsOf(given: readonly SpeciesProfile[], terms: Terms): readonly Animal[] {
  const profiles = profilesOf(given, ["profiles"]);
  if (profiles.length === 0) throw refusal("profiles", "at least one profile", given, "range");
  return profiles.map((profile, place) => ({
    place,
    profile,
    waters: Object.fromEntries(waterAxes.map((axis) => [axis, keptWater(profile, axis, terms)])),
  }));
}
