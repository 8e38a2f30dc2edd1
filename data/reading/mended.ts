// Text that was written as UTF-8 and read as Windows-1252: "ü" becomes "Ã¼".

/** What Windows-1252 has in the place of the control characters from 0x80 on; a space where it has nothing. */
const special = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

/** The byte of a letter in Windows-1252, or in Latin-1. */
function byteOf(letter: string): number | undefined {
  const place = special.indexOf(letter);
  const code = place < 0 ? letter.charCodeAt(0) : 0x80 + place;
  return code < 0x100 ? code : undefined;
}

/** A text with the letters that it had before it was misread; the text itself where it was not. */
export const mended = (text: string): string => text.replace(/[^\0-\x7f]{2,}/gu, readAgain);

/** What letters are if their bytes are UTF-8. Hardly any two letters beyond ASCII beside each other are. */
function readAgain(letters: string): string {
  const read = [...letters].map(byteOf);
  if (read.includes(undefined)) return letters;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(Uint8Array.from(read as number[]));
  } catch {
    return letters;
  }
}
