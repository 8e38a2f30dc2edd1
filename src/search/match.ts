import type { NameKind } from "./names";
import { slips } from "./slips";

/** A name as it is searched. */
export interface Searched {
  /** Its letters alone: spaces are set as one likes. */
  readonly letters: string;
  /** Where its words begin among them. */
  readonly words: readonly number[];
  /** Which letters there are, a bit each, some letters sharing one: a quick way to tell that a name lacks some. */
  readonly held: number;
}

/** What was typed, as it is searched for. */
export interface Typed extends Searched {
  /** Its words, each by itself. */
  readonly parts: readonly string[];
}

/** How well a name fits. */
export interface Match {
  /** See {@link Suggestion.rank}. */
  readonly rank: number;
  /** Of names of one rank, the lower come first. */
  readonly finer: number;
}

/** A name as it is searched, of one of its spellings. */
export function searched(spelling: string): Searched {
  let length = 0;
  const parts = spelling.split(" ");
  const words = parts.map((part) => {
    const begin = length;
    length += part.length;
    return begin;
  });
  const letters = parts.join("");
  return { letters, words, held: heldIn(letters) };
}

function heldIn(letters: string): number {
  let held = 0;
  for (let at = 0; at < letters.length; at += 1) held |= 1 << (letters.charCodeAt(at) % 30);
  return held;
}

/** At least so many of the letters typed are not in a name. */
function lacking(typed: Searched, name: Searched): number {
  let count = 0;
  for (let left = typed.held & ~name.held; left !== 0; left &= left - 1) count += 1;
  return count;
}

export const typedIn = (spelling: string): Typed => ({
  ...searched(spelling),
  parts: spelling.split(" "),
});

/** A spelling with its words as an English speaker would say them of one: `black neons` as `black neon`. */
export const ofOne = (spelling: string): string =>
  spelling
    .replaceAll(/(?<=\p{L}{3})ies(?!\p{L})/gu, "y")
    .replaceAll(/(?<=\p{L}(?:s|x|z|ch|sh))es(?!\p{L})/gu, "")
    .replaceAll(/(?<=\p{L}{2}[^su ])s(?!\p{L})/gu, "");

/** A spelling without a fish at its end, which people say behind names that have none: `betta fish` as `betta`. */
export const withoutFish = (spelling: string): string => spelling.replace(/ fish$/, "");

/** The best match of several spellings of what was typed. */
export function bestOf(
  spellings: readonly Typed[],
  match: (typed: Typed) => Match | undefined,
): Match | undefined {
  let best: Match | undefined;
  for (const typed of spellings) {
    const found = match(typed);
    if (found && (!best || ranked(found, best) < 0)) best = found;
  }
  return best;
}

/** Below zero where the first fits better. */
export const ranked = (a: Match, b: Match): number => a.rank - b.rank || a.finer - b.finer;

/** How well a name fits as it is spelt. */
export function matchOf(typed: Typed, name: Searched, as: NameKind): Match | undefined {
  if (lacking(typed, name) > 0) return undefined;
  if (as === "group") return name.letters.startsWith(typed.letters) ? { rank: 5, finer: 0 } : undefined;
  if (name.letters === typed.letters) return { rank: 0, finer: 0 };
  const way = wayOf(typed, name);
  if (way === undefined) return undefined;
  return as === "synonym" ? { rank: 4, finer: way } : { rank: way, finer: as === "form" ? 1 : 0 };
}

/** 1 for its beginning, 2 for beginnings of words, 3 for within. */
function wayOf(typed: Typed, name: Searched): number | undefined {
  const { letters, parts } = typed;
  const at = name.letters.indexOf(letters);
  if (at === 0) return 1;
  if (at > 0 && beginsWord(letters, name)) return 2;
  if (parts.length > 1 && parts.every((part) => beginsWord(part, name))) return 2;
  return at > 0 && letters.length >= leastWithin && isWithin(typed, name, at) ? 3 : undefined;
}

/** Whether a name has what was typed, from a place on, with no word that begins within it but where one was typed. */
function isWithin({ letters, words }: Typed, name: Searched, from: number): boolean {
  for (let at = from; at > 0; at = name.letters.indexOf(letters, at + 1)) {
    if (name.words.every((word) => word <= at || word >= at + letters.length || words.includes(word - at)))
      return true;
  }
  return false;
}

function beginsWord(letters: string, name: Searched): boolean {
  for (const word of name.words) if (name.letters.startsWith(letters, word)) return true;
  return false;
}

/** Whether a name has what was typed as whole words, one after the other. */
export function hasWords({ letters }: Typed, name: Searched): boolean {
  const ends = [...name.words, name.letters.length];
  return name.words.some(
    (word) => name.letters.startsWith(letters, word) && ends.includes(word + letters.length),
  );
}

/** Whether a name is what was typed, or ends on it as on a word of its own: what it is called, as all tetras are. */
export function endsOn({ letters }: Typed, name: Searched): boolean {
  return name.letters.endsWith(letters) && name.words.includes(name.letters.length - letters.length);
}

/** Fewer letters stand within too many names. */
const leastWithin = 3;

/** How well a name fits if what was typed is misspelt. Names that science has given up come last. */
export function nearMatchOf(typed: Typed, name: Searched, as: NameKind): Match | undefined {
  const most = slipsAllowed(typed.letters);
  if (most === 0 || lacking(typed, name) > most) return undefined;
  const first = slips(typed.letters, name.letters, most);
  let fewest = first;
  for (const word of name.words) {
    if (word > 0 && fewest > 0) fewest = Math.min(fewest, slips(typed.letters, name.letters, most, 0, word));
  }
  if (fewest > most) return undefined;
  const finer = laterOf[as] + (first === fewest ? 0 : 1);
  return { rank: 5 + Math.max(fewest, 1), finer };
}

/** How far a misspelt name stands behind others by its kind. */
const laterOf: Readonly<Record<NameKind, number>> = {
  scientific: 0,
  vernacular: 0,
  group: 0,
  form: 2,
  synonym: 4,
};

/** How many slips may lie in what was typed. The number of a catfish is another catfish if it is another number. */
function slipsAllowed(letters: string): number {
  if (letters.length < 4 || /\d/.test(letters)) return 0;
  return letters.length < 8 ? 1 : 2;
}
