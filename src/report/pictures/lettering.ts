/** Letters narrower and wider than most, as shares of the size of a common typeface without serifs. */
const shares: readonly (readonly [letters: RegExp, share: number])[] = [
  [/\p{M}|\p{Cf}/u, 0],
  [/[il.,:;'|!()[\]ftrjI\s-]/u, 0.36],
  [/[mwMW%@—…]/u, 0.95],
  [/\p{Lu}|[&_<>+=~#]/u, 0.74],
  [
    /[^\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}]|[\p{Emoji_Presentation}\uff00-\uff60]/u,
    1.1,
  ],
];
const most = 0.6;

/** What two widths may differ by that are the same. */
const hair = 0.01;

/** About how wide text is in user units, rather too wide than too narrow: no typeface is measured. */
export const widthOf = (text: string, size: number): number =>
  [...text].reduce((sum, letter) => sum + shareOf(letter) * size, 0);

const shareOf = (letter: string) => shares.find(([letters]) => letters.test(letter))?.[1] ?? most;

/** Text that fits a width, its end left out where it must be. */
export function fitted(text: string, width: number, size: number): string {
  if (widthOf(text, size) <= width + hair) return text;
  const letters = [...text];
  while (letters.length > 0 && widthOf(`${letters.join("")}…`, size) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/** Text in lines that fit a width; a word that is wider is shortened. */
export function linesOf(text: string, width: number, size: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(fitted(word, width, size));
  }
  return lines;
}
