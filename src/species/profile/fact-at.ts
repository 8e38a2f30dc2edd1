import { objectOf } from "../../checks";
import { splitPath } from "../traits/path";
import type { TraitPath } from "../traits/values";
import type { Fact, Facts, TraitValue } from "./profile";

/**
 * The fact of a trait, or undefined where it is unknown.
 *
 * @throws InvalidInputError where there is no such trait, or for what is no profile.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { factAt } from "vivary/species";
 *
 * factAt(danioRerio, "social.living")?.value; // => "shoal"
 * ```
 */
export function factAt<Path extends TraitPath>(
  profile: Facts,
  path: Path,
): Fact<TraitValue<Path>> | undefined {
  const [section, name] = splitPath(path);
  const traits = objectOf(profile, "profile")[section];
  const fact: unknown = traits && Reflect.get(objectOf(traits, section), name);
  return fact as Fact<TraitValue<Path>> | undefined;
}
