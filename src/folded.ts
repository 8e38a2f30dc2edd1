/**
 * A name as it is compared: without case, accents and apostrophes, its words joined by single spaces whatever stood
 * between them, the numbers of catfishes without a space or a nought before them. `Pátzcuaro dwarf-crayfish` and
 * `patzcuaro Dwarf crayfish` are one name, and so are `L46` and `L 046` (common practice, no source).
 */
export const folded = (name: string): string => compared(decomposed(name));

/**
 * The ways in which a name is spelt, as they are compared: with the dots of ä, ö and ü left off, and with an e in their
 * place, as whoever has no German keys types them. One where there are none.
 */
export function spellings(name: string): readonly string[] {
  const letters = decomposed(name);
  const [plain, spelt] = [compared(letters), compared(letters.replaceAll(/(?<=[aou])\u0308/g, "e"))];
  return plain === spelt ? [plain] : [plain, spelt];
}

const decomposed = (name: string) => name.normalize("NFKD").toLowerCase();

const compared = (letters: string) =>
  letters
    .replaceAll(/[ßæœøłđ]/g, (letter) => plainLetters[letter] ?? letter)
    .replaceAll(/[\p{M}'’‘ʼ´\x60]/gu, "")
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim()
    .replaceAll(/(?<![\p{L}\p{N}])(l|lda) ?0*(?=\d)/gu, "$1");

/** Letters that carry no mark to take off. */
const plainLetters: Readonly<Record<string, string>> = { ß: "ss", æ: "ae", œ: "oe", ø: "o", ł: "l", đ: "d" };
