import { InvalidInputError, listOf, refusal } from "../../errors";
import { profileProblems } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";
import type { PerAxis } from "./answer";
import { waterAxes } from "./room/axes";
import { type KeptWater, keptWater } from "./room/kept-water";
import type { Terms } from "./terms";

/** A species of a list, with what its water may be. */
export interface Animal {
  readonly place: number;
  readonly profile: SpeciesProfile;
  readonly waters: PerAxis<KeptWater | undefined>;
}

/** The species of a list, or an InvalidInputError where it holds none or what is no profile. */
export function animalsOf(profiles: readonly SpeciesProfile[], terms: Terms): readonly Animal[] {
  if (listOf(profiles, "profiles").length === 0) throw refusal("profiles", "at least one profile", profiles);
  const problems = profiles.flatMap((profile, index) => profileProblems(profile, ["profiles", index]));
  if (problems.length > 0) throw new InvalidInputError(problems);
  return profiles.map((profile, place) => ({
    place,
    profile,
    waters: Object.fromEntries(waterAxes.map((axis) => [axis, keptWater(profile, axis, terms)])),
  }));
}
