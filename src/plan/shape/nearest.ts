/** ` (cover?)` behind a list of words, where something else was probably meant to be one of them. */
export function meant(given: unknown, words: readonly string[]): string {
  const near = typeof given === "string" ? nearest(given, words) : undefined;
  return near === undefined ? "" : ` (${near}?)`;
}

/** The word of a list that a misspelt one was probably meant to be, if any is near enough. */
function nearest(word: string, words: readonly string[]): string | undefined {
  const typed = word.slice(0, longest).toLowerCase();
  const [best] = words
    .map((known) => ({ known, edits: editsBetween(typed, known.toLowerCase()) }))
    .filter(({ known, edits }) => edits <= Math.max(1, known.length / 3))
    .sort((a, b) => a.edits - b.edits);
  return best?.known;
}

const longest = 40;

/** How many letters must be added, taken away or changed to make one word of another (Levenshtein 1966). */
function editsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...b].entries()) {
      const changed = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(changed, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
