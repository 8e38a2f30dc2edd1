import { refusal } from "../../errors";
import { profilesOf } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";

/** The profiles, refused where there are none or one is no profile. */
export function checkedProfiles(given: readonly SpeciesProfile[]): readonly SpeciesProfile[] {
  const profiles = profilesOf(given, ["profiles"]);
  if (profiles.length === 0) throw refusal("profiles", "at least one profile", given, "range");
  return profiles;
}
