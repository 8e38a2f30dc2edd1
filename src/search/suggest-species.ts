import { listOf, objectOf, refuseOthers, wholeNumber } from "../checks";
import { ofPart } from "../errors";
import { spellings } from "../folded";
import { typedName } from "../typed-name";
import {
  acceptedNames,
  type Bearer,
  type Entry,
  keyOf,
  type Language,
  languageOf,
  scientificEntries,
} from "./entries";
import en from "./languages/en";
import {
  bestOf,
  endsOn,
  hasWords,
  type Match,
  matchOf,
  nearMatchOf,
  ofOne,
  ranked,
  typedIn,
  withoutFish,
} from "./match";
import type { NameKind, SearchNames } from "./names";

/** A species that may be meant by what was typed. */
export interface Suggestion {
  /** The species, for {@link loadSpecies}. */
  readonly id: string;
  /** The form that is meant; absent where it is the species itself. */
  readonly form?: string;
  /**
   * What to show: the first name in the first of the languages given that has one, of its species where the form has none;
   * else the scientific name. In English where no language is given. Reports in a language call it the same.
   */
  readonly name: string;
  /** The name that fits what was typed, and which of its names that is. */
  readonly matched: { readonly text: string; readonly as: NameKind };
  /**
   * How well it fits, 0 best: 0 the whole name, whichever; 1 a name that begins so; 2 one in which a word begins so, or
   * all words typed do, in any order; 3 one that has it within a word; 4 an old scientific name in any of these ways;
   * 5 the name of a group; 6 and 7 a name of any kind with one slip of the finger, and with two.
   */
  readonly rank: number;
}

/** How to search. */
export interface SuggestOptions {
  /** How many to give, at most; a whole number, 10 by default. */
  readonly most?: number | undefined;
  /**
   * Languages besides English, that of the reader first: the default exports of `vivary/search/<language>`. English is
   * searched in any case; with `vivary/search/en` last it is shown, too, where the others have no name.
   */
  readonly languages?: readonly SearchNames[] | undefined;
}

/**
 * The species that may be meant by what somebody is typing, the best first, those that fit alike by name. Case, accents,
 * apostrophes, spaces and hyphens do not matter, ä, ö and ü are found as ae, oe and ue as well, `L46` as `L046`, and words
 * by their English plurals, behind those that fit as typed; `betta fish` is found as `betta`. Where no name in use, nor a
 * word of one, begins as typed, names of four letters or more are found with one slip of the finger, of eight or more with
 * two; none by a text with a number in it. A form is given where its own name fits better than those of its species.
 *
 * @param typed - At most 200 characters; nothing is found by none.
 * @throws InvalidInputError for anything but a text, for a longer one, for a `most` below 1, and for languages that are none.
 *
 * @example
 * ```ts
 * import { suggestSpecies } from "vivary/search";
 *
 * suggestSpecies("neon t", { most: 1 }); // => [{ id: "paracheirodon-innesi", name: "neon tetra", matched: { text: "neon tetra", as: "vernacular" }, rank: 1 }]
 * suggestSpecies("moss barb")[0]?.form; // => "green"
 * suggestSpecies("anglefish")[0]?.name; // => "freshwater angelfish"
 * suggestSpecies("corydoras pal")[0]?.matched; // => { text: "Corydoras paleatus", as: "synonym" }
 * ```
 */
export function suggestSpecies(typed: string, options: SuggestOptions = {}): readonly Suggestion[] {
  const spelt = spellings(typedName(typed, "typed"));
  const wanted = spelt.map(typedIn);
  const single = spelt.map(ofOne).flatMap((one) => (spelt.includes(one) ? [] : [typedIn(one)]));
  const { most = 10, languages: asked, ...others } = objectOf(options, "options");
  refuseOthers(others);
  wholeNumber(most, "options.most");
  if (spelt[0] === "") return [];
  const given = languagesIn(asked);
  const languages = [...given, languageOf(en)];
  const entries = [...languages.map((language) => language.entries), scientificEntries()];
  const found = new Map<string, Found>();
  const isFound = () => [...found.values()].some(({ match }) => match.rank < withinWord);
  gather(found, entries, (entry) => bestOf(wanted, (one) => matchOf(one, entry, entry.as)));
  const asTyped = [...found].filter(([, { match }]) => match.rank < withinWord);
  if (single.length > 0) {
    const fits = asTyped.length > 0 ? hasWords : () => true;
    gather(found, entries, (entry) =>
      behind(bestOf(single, (one) => (fits(one, entry) ? matchOf(one, entry, entry.as) : undefined))),
    );
    for (const [key, one] of asTyped) found.set(key, one);
  }
  const named = spelt.map((spelling) => typedIn(withoutFish(ofOne(spelling))));
  if (!isFound())
    gather(found, entries, (entry) =>
      bestOf(named, (one) => (endsOn(one, entry) ? matchOf(one, entry, entry.as) : undefined)),
    );
  if (!isFound())
    gather(found, entries, (entry) =>
      bestOf([...wanted, ...single], (one) => nearMatchOf(one, entry, entry.as)),
    );
  return withoutNeedlessForms(found)
    .map((one) => ({ ...one, shown: shownName(one.bearer, given.length > 0 ? given : languages) }))
    .sort(byFit)
    .slice(0, most)
    .map(({ bearer, shown, entry: { text, as }, match: { rank } }) => ({
      ...bearer,
      name: shown.text,
      matched: { text, as },
      rank,
    }));
}

/** The rank of a name that has what was typed within a word only: it may as well be misspelt. */
const withinWord = 3;

/** A match of one, where several were typed: of its rank it comes behind the names that were typed, forms among them. */
const behind = (match: Match | undefined): Match | undefined =>
  match && { rank: match.rank, finer: match.finer + 2 };

interface Found {
  readonly bearer: Bearer;
  readonly entry: Entry;
  readonly match: Match;
}

/** Adds whom the names that fit are of, each by the name that fits best. */
function gather(
  found: Map<string, Found>,
  entries: readonly (readonly Entry[])[],
  matchOf: (entry: Entry) => Match | undefined,
): void {
  for (const list of entries) {
    for (const entry of list) {
      const match = matchOf(entry);
      if (match) add(found, entry, match);
    }
  }
}

function add(found: Map<string, Found>, entry: Entry, match: Match): void {
  for (const bearer of entry.bearers) {
    const key = keyOf(bearer);
    const known = found.get(key);
    if (!known || ranked(match, known.match) < 0) found.set(key, { bearer, entry, match });
  }
}

/** Forms only where they fit better than their species. */
function withoutNeedlessForms(found: ReadonlyMap<string, Found>): readonly Found[] {
  return [...found.values()].filter(({ bearer: { id, form }, match }) => {
    const species = form === undefined ? undefined : found.get(id);
    return !species || ranked(match, species.match) < 0;
  });
}

function shownName(bearer: Bearer, languages: readonly Language[]): Entry {
  const own = languages.map(({ first }) => first.get(keyOf(bearer)) ?? first.get(bearer.id)).find(Boolean);
  const name = own ?? acceptedNames().get(bearer.id);
  if (!name) throw new Error(`${bearer.id} has no name.`);
  return name;
}

type Shown = Found & { readonly shown: Entry };

/** The best first; those that fit alike by the name that is shown. */
const byFit = (a: Shown, b: Shown) =>
  ranked(a.match, b.match) ||
  compared(a.shown.letters, b.shown.letters) ||
  compared(keyOf(a.bearer), keyOf(b.bearer));

function compared(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Languages that a caller gives, as they are searched. */
function languagesIn(languages: readonly SearchNames[] = []): readonly Language[] {
  return Array.from(listOf(languages, "options.languages"), (one, index) => {
    objectOf(one, `options.languages[${index}]`);
    return ofPart(["options", "languages", index], () => languageOf(one));
  });
}
