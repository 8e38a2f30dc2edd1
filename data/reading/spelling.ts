// Guesses what was meant.
import { distance } from "fastest-levenshtein";

/** The word nearest to a misspelt one, by at most so many letters; undefined where none is near. */
export function nearest(
  word: string,
  known: Iterable<string>,
  most = Math.min(3, Math.ceil(word.length / 3)),
): string | undefined {
  const plain = word.toLowerCase();
  const ranked = [...known]
    .filter((other) => other !== word)
    .map((other) => ({ other, far: distance(plain, other.toLowerCase()) }))
    .sort((a, b) => a.far - b.far);
  const [best] = ranked;
  return best && best.far <= most ? best.other : undefined;
}

/** A question that ends a sentence. */
export const guess = (word: string, known: Iterable<string>): string => {
  const meant = nearest(word, known);
  return meant === undefined ? "" : ` Did you mean ${meant}?`;
};

/** The id nearest to a misspelt one. Relatives are called alike, so that few letters may be wrong. */
export const nearestId = (id: string, known: Iterable<string>): string | undefined =>
  nearest(id, known, id.length - id.indexOf("-") > 9 ? 2 : 1);
