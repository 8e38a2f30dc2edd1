import type { Place } from "./messages";
import { sentenceCase } from "./sentences";

type Gender = "der" | "die" | "das";

/** How nouns that end so are declined. */
interface Noun {
  readonly ending: string;
  readonly gender: Gender;
  /** The ending of several. */
  readonly many: string;
  /** The ending of one as an object. */
  readonly object: string;
}

/** Nouns by their endings; `many` and `object` are added to an ending if they begin with a hyphen, else they replace it. */
function nounsOf(gender: Gender, many: string, endings: string, object = "-"): readonly Noun[] {
  const changed = (ending: string, to: string) => (to.startsWith("-") ? ending + to.slice(1) : to);
  return endings
    .split(" ")
    .map((ending) => ({ ending, gender, many: changed(ending, many), object: changed(ending, object) }));
}

/** The nouns of German names of aquarium animals, the longest endings first. */
const nouns: readonly Noun[] = /* @__PURE__ */ allNouns();

function allNouns(): readonly Noun[] {
  return [
    ...nounsOf("der", "-e", "fisch barsch wels ling hecht krebs aal skalar hai schweif"),
    ...nounsOf("der", "-", "salmler träger schwimmer flosser sauger lipper peitzger rochen karpfen dollar"),
    ...nounsOf("der", "-", "koi goi ogon oranda ranchu ryukin shubunkin diskus lopez labidochromis ramirezi"),
    ...nounsOf("der", "-s", "neon guppy molly platy gurami oskar acara zebra plakat sarasa moor piranha"),
    ...nounsOf("der", "-s", "yellow tetra"),
    ...nounsOf("der", "-n", "makropode cichlide", "-n"),
    ...nounsOf("der", "schwänze", "schwanz"),
    ...nounsOf("der", "köpfe", "kopf"),
    ...nounsOf("der", "frösche", "frosch"),
    ...nounsOf("die", "-n", "schmerle barbe schnecke garnele grundel angel krabbe muschel"),
    ...nounsOf("die", "-en", "kreuzung form"),
    ...nounsOf("die", "-nen", "prinzessin"),
    ...nounsOf("die", "-s", "rasbora"),
    ...nounsOf("die", "-", "moenkhausia"),
    ...nounsOf("das", "-n", "auge"),
    ...nounsOf("das", "blätter", "blatt"),
  ].sort((a, b) => b.ending.length - a.ending.length);
}

/** `Roter` who is no more than that: `Roter von Rio`. */
const unnamed: Noun = { ending: "", gender: "der", many: "", object: "" };

const strong = { der: "er", die: "e", das: "es" };

const isAdjective = (word: string, { gender }: Noun) => word.endsWith(strong[gender]);

/** A name in its parts: `Roter` and `Neon`, `Prinzessin` and ` von Burundi`. */
interface Parts {
  readonly before: readonly string[];
  readonly stem: string;
  readonly noun: Noun;
  readonly after: string;
}

function partsOf(name: string): Parts | undefined {
  const [head = ""] = name.split(/ (?:von|des|der) /);
  const after = name.slice(head.length);
  const words = head.split(" ");
  const last = words.at(-1) ?? "";
  const noun = nouns.find(({ ending }) => last.toLowerCase().endsWith(ending));
  if (noun)
    return { before: words.slice(0, -1), stem: last.slice(0, last.length - noun.ending.length), noun, after };
  return after && isAdjective(last, unnamed) ? { before: words, stem: "", noun: unnamed, after } : undefined;
}

/** A name whose adjectives and noun have other endings. */
function declined(
  { before, stem, noun, after }: Parts,
  adjective: string,
  ending: string,
  article = "",
): string {
  const words = before.map((word) =>
    isAdjective(word, noun) ? word.slice(0, word.length - strong[noun.gender].length) + adjective : word,
  );
  const last = stem + (/^$|-$/.test(stem) ? sentenceCase(ending) : ending);
  return [article, ...words, last].filter(Boolean).join(" ") + after;
}

/** What several of a name are called: `Rote Neons`, `Sumatrabarben`; as it is where its noun is not known. */
export function severalOf(name: string): string {
  const parts = partsOf(name);
  return parts ? declined(parts, "e", parts.noun.many) : name;
}

/** One of a name with its article: `der Rote Neon`, `den Roten Neon`; without one if it begins with a person's name. */
export function singleOf(name: string, as: Place): string {
  const parts = partsOf(name);
  if (!parts) return name;
  const { before, noun } = parts;
  const [first = ""] = before;
  const isChanged = as === "object" && noun.gender === "der";
  const ending = isChanged ? noun.object : noun.ending;
  if (/[s'’]$/.test(first) && !isAdjective(first, noun)) return declined(parts, strong[noun.gender], ending);
  return isChanged ? declined(parts, "en", ending, "den") : declined(parts, "e", ending, noun.gender);
}

/** Whether the noun of a name is known, so that it can be declined. */
export const isDeclined = (name: string) => partsOf(name) !== undefined;
