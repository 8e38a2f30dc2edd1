import { limitingPair, overlap, type PartialRange, type Range } from "../../../ranges";
import type { Messages } from "../../messages/messages";
import type { RangeRow } from "./range-rows";

/** What the species with figures have in common; of one alone nothing. */
export function sharedBy(rows: readonly RangeRow[]): PartialRange | undefined {
  const [first, second, ...more] = rows.flatMap(({ kept }) => (kept ? [finiteEnds(kept)] : []));
  return first && second && overlap(first, second, ...more);
}

const finiteEnds = ({ min, max }: Range): PartialRange => ({
  ...(Number.isFinite(min) && { min }),
  ...(Number.isFinite(max) && { max }),
});

/** What they have in common as a sentence, or which two have nothing; none where fewer than two have figures. */
export function sharedSentence(
  rows: readonly RangeRow[],
  shared: PartialRange | undefined,
  { pictures }: Messages,
  inWords: (range: PartialRange) => string,
): readonly string[] {
  const known = rows.flatMap(({ kept, name }) => (kept ? [{ name, range: finiteEnds(kept) }] : []));
  if (known.length < 2) return [];
  if (shared) return [pictures.shared(inWords(shared), known.length, rows.length)];
  const pair = limitingPair(known, ({ range }) => range);
  const [one, other] = [known[pair?.smallestMax ?? 0], known[pair?.largestMin ?? 0]];
  return one && other ? [pictures.apart(one.name.spoken, other.name.spoken)] : [];
}
