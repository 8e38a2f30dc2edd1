import { InvalidInputError, listOf } from "../errors";
import { profileProblems } from "../plan/inner";
import type { SpeciesProfile } from "../species";

/** The profiles themselves, or an {@link InvalidInputError} with all that is wrong where they are none, such as records. */
export function checkedProfiles(profiles: readonly SpeciesProfile[]): readonly SpeciesProfile[] {
  const problems = listOf(profiles, "profiles").flatMap((profile, index) =>
    profileProblems(profile, ["profiles", index]),
  );
  if (problems.length > 0) throw new InvalidInputError(problems);
  return profiles;
}
