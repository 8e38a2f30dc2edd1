import { objectOf, refusal } from "./errors";
import { meant } from "./nearest";

/**
 * The options themselves, or an InvalidInputError where they are no object, or have a key that nothing reads: a
 * misspelt one would be left out in silence.
 */
export function knownKeys<Given extends object>(
  given: Given,
  keys: readonly (keyof Given & string)[],
  subject = "options",
): Given {
  const known: readonly string[] = keys;
  for (const key of Object.keys(objectOf(given, subject))) {
    const expected = `one of ${known.join(", ")}${meant(key, known)}`;
    if (!known.includes(key)) throw refusal(`${subject}.${key}`, expected, key, "unknown-key");
  }
  return given;
}
