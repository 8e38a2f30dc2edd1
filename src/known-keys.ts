import { InvalidInputError, objectOf, type Problem } from "./errors";
import { meant } from "./nearest";

/**
 * The options themselves, or an {@link InvalidInputError} where they are no object, or have a key that nothing reads: a
 * misspelt one would be left out in silence.
 */
export function knownKeys<Given>(given: Given, keys: readonly (keyof Given)[], subject = "options"): Given {
  const known = keys.map(String);
  const problems = Object.keys(Object(objectOf(given, subject)))
    .filter((key) => !known.includes(key))
    .map(
      (key): Problem => ({
        path: [subject, key],
        code: "unknown-key",
        expected: `one of ${known.join(", ")}${meant(key, known)}`,
        found: key,
      }),
    );
  if (problems.length > 0) throw new InvalidInputError(problems);
  return given;
}
