/**
 * A name as it is compared: without case, accents and apostrophes, its words joined by single spaces whatever stood
 * between them. `Pátzcuaro dwarf-crayfish` and `patzcuaro Dwarf crayfish` are one name.
 */
export function folded(name: string): string {
  return name
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[ßæœøłđ]/g, (letter) => plainLetters[letter] ?? letter)
    .replaceAll(/[\p{M}'’‘ʼ´\x60]/gu, "")
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** Letters that carry no mark to take off. */
const plainLetters: Readonly<Record<string, string>> = { ß: "ss", æ: "ae", œ: "oe", ø: "o", ł: "l", đ: "d" };
