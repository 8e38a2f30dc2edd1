import { InvalidInputError, listOf } from "../errors";
import { profileProblems } from "../plan/inner";
import type { SpeciesProfile } from "../species";

/** The company that may be added, or an InvalidInputError where it is no list of profiles. */
export function checkedCompany(company: readonly SpeciesProfile[]): readonly SpeciesProfile[] {
  const profiles = Array.from(listOf(company, "options.company"));
  const problems = profiles.flatMap((profile, index) =>
    profileProblems(profile, ["options", "company", index]),
  );
  if (problems.length > 0) throw new InvalidInputError(problems);
  return profiles;
}
