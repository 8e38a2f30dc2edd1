import { InvalidInputError, listOf, refusal } from "../../errors";
import { profileProblems } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";

/** The profiles, refused where there are none or one is no profile. */
export function checkedProfiles(profiles: readonly SpeciesProfile[]): readonly SpeciesProfile[] {
  if (listOf(profiles, "profiles").length === 0) throw refusal("profiles", "at least one profile", profiles);
  const problems = profiles.flatMap((profile, index) => profileProblems(profile, ["profiles", index]));
  if (problems.length > 0) throw new InvalidInputError(problems);
  return profiles;
}
