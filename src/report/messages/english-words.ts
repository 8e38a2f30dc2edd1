import type { WordKind, Words } from "../../compatibility";
import { classLists } from "../../species/inner";
import type { Messages, PlanWords, SpelledWords } from "./messages";
import { spaced, type Things } from "./sentences";

// Words that sentences, tables and pages have in common.

export const basis: Messages["basis"] = {
  published: "published",
  curated: "weighed from several sources",
  memory: "recalled, not checked",
  "common-practice": "common practice",
  observed: "observed by a keeper",
  derived: "reckoned from what is nearest known",
};

export const ranges: Messages["ranges"] = {
  atLeast: (min, unit) => `at least ${min}${unit}`,
  atMost: (max, unit) => `at most ${max}${unit}`,
  between: (min, max, unit) => `${min} to ${max}${unit}`,
  below: (min) => `below ${min}`,
  above: (max) => `above ${max}`,
  outside: (span) => `outside ${span}`,
  across: (length, width, unit) => `${length} × ${width}${unit}`,
};

export const deeds: Readonly<Record<Words["does"], readonly [one: string, several: string]>> = {
  chases: ["chases", "chase"],
  bites: ["bites", "bite"],
  kills: ["kills", "kill"],
  "nips-fins": ["bites pieces out of the fins of", "bite pieces out of the fins of"],
  "rasps-mucus": ["rasps the slime coat off", "rasp the slime coat off"],
  "robs-food": ["takes food away from", "take food away from"],
};

/** When one does something, and when several do. */
export const occasions: Readonly<Record<Words["when"], readonly [one: string, several: string]>> = {
  always: ["", ""],
  breeding: [" while it breeds", " while they breed"],
  "guarding-brood": [" while it guards eggs or young", " while they guard eggs or young"],
  feeding: [" at food", " at food"],
  crowded: [" where there is no room to get out of the way", " where there is no room to get out of the way"],
};

export const airs: Readonly<Record<Words["airBreathing"], string>> = {
  none: "never takes air",
  facultative: "takes air when the water holds little oxygen",
  obligate: "drowns without air from the surface",
};

export const statuses: Readonly<Record<Words["conservation"], string>> = {
  EX: "extinct",
  EW: "extinct in the wild",
  CR: "critically endangered",
  EN: "endangered",
  VU: "vulnerable",
  NT: "near threatened",
  LC: "least concern",
  DD: "data deficient",
  NE: "not evaluated",
};

export const holders: Readonly<Record<Words["territoryHolder"], string>> = {
  male: "each male",
  female: "each female",
  pair: "a pair",
  each: "each animal",
};

export const places: Readonly<Record<Words["zone"], string>> = {
  surface: "at the surface",
  midwater: "in the open water",
  bottom: "on the ground",
};

export const grounds: Readonly<Record<Words["ground"], string>> = {
  bare: "bare glass",
  sand: "sand",
  "fine-gravel": "fine gravel",
  "coarse-gravel": "coarse gravel",
  pebbles: "pebbles",
};

export const prey: Readonly<Record<Words["prey"], string>> = {
  egg: "eggs",
  fry: "fry",
  fish: "fish",
  shrimplet: "young shrimps",
  shrimp: "shrimps",
  snail: "snails",
  "young-snail": "young snails",
  crayfish: "crayfish",
  "young-crayfish": "young crayfish",
  crab: "crabs",
  "young-crab": "young crabs",
  mussel: "mussels",
  frog: "frogs",
  tadpole: "tadpoles",
};

export const parts: Readonly<Record<Words["zone"], string>> = {
  surface: "near the surface",
  midwater: "in open water",
  bottom: "on the ground",
};

export const plantHarm: Readonly<Record<Words["plantHarm"], readonly [one: string, several: string]>> = {
  eats: ["eats plants", "eat plants"],
  uproots: ["pulls plants out", "pull plants out"],
  digs: ["digs, so that plants loosen", "dig, so that plants loosen"],
};

export const feedingHours: Readonly<Record<Words["light"], string>> = {
  day: "by day",
  dusk: "at dusk",
  night: "after dark",
};

/** The facts of a plan in a word or two, and what they are part of. */
export const things: Things = {
  "tank.longestRun": ["length", "tank"],
  "tank.footprint": ["floor", "tank"],
  "tank.height": ["height", "tank"],
  "tank.lid": ["lid", "lid"],
  "tank.cover": ["cover", "furnishing"],
  "tank.openWater": ["room to swim", "furnishing"],
  "tank.openSurface": ["air at the surface", "furnishing"],
  "tank.sightBreaks": ["broken lines of sight", "furnishing"],
  "tank.substrate": ["ground", "furnishing"],
  "tank.hides": ["hiding places", "furnishing"],
  "tank.plants": ["plants", "furnishing"],
  "tank.flow.calmest": ["current", "current"],
  "tank.flow.strongest": ["current", "current"],
  "tank.filter.ripeArea": ["filter", "filter"],
  "water.temperature": ["temperature", "water"],
  "water.hottest": ["hottest day", "water"],
  "water.coolest": ["coolest season", "water"],
  "water.pH": ["pH", "water"],
  "water.generalHardness": ["hardness", "water"],
  "water.salinity": ["salinity", "water"],
  "group.count": ["numbers", "numbers"],
  "group.males": ["sexes", "numbers"],
  "group.females": ["sexes", "numbers"],
  "group.pairs": ["sexes", "numbers"],
  "group.femalesPerMale": ["sexes", "numbers"],
  "group.length": ["size of the animals", "animals"],
  "group.sex": ["sexes", "numbers"],
  "group.form": ["forms", "animals"],
  "group.grown": ["age", "animals"],
  "group.longFins": ["fins", "animals"],
  "group.company": ["calm company", "company"],
  "group.offerings": ["food", "food"],
};

/** Food as it is given, where the vocabulary calls it otherwise. */
export const offered = {
  dry: "dry food",
  frozen: "frozen food",
  live: "live food",
  "fallen-insects": "insects on the surface",
} as const;

/** What is given in place of what grows. */
export const grown = { plants: "vegetables and leaves", wood: "wood to rasp" } as const;

/** Words that English says otherwise than the vocabulary. */
export const said: { readonly [Kind in WordKind]?: { readonly [Word in Words[Kind]]?: string } } = {
  bodyShape: {
    "eel-like": "like an eel",
    elongated: "slender",
    fusiform: "a spindle",
    "short-deep": "short and deep",
  },
  supply: { mixed: "both", wild: "caught" },
  jumps: { startled: "when frightened" },
  living: { either: "alone or with its kind" },
  light: feedingHours,
  food: offered,
  reproduction: {
    "scatters-eggs": "scatters its eggs",
    "guards-eggs": "guards its eggs",
    "bubble-nest": "builds a nest of bubbles",
    livebearer: "bears live young",
    "large-young": "bears few large young",
    "broods-young": "carries its eggs; the young hatch complete",
    "sea-larvae": "larvae need brackish or sea water",
  },
  prey,
  target: {
    "own-sex": "their own sex",
    "other-sex": "the other sex",
    "own-kind": "their own kind",
    "look-alike": "fish that look like them",
    "long-finned": "fish with long fins",
    smaller: "smaller animals",
    any: "whoever is near",
  },
  look: { "oval-thread-fins": "oval, with fins drawn out to threads" },
  sensitivity: { "ammonia-nitrite": "ammonia and nitrite" },
  basis,
};

/** In English the words of traits are what they are called, but for their hyphens. */
export function spelled(): Messages["words"] {
  const lists: Readonly<Record<string, readonly string[]>> = {
    ...classLists,
    basis: Object.keys(basis),
    plantHarm: Object.keys(plantHarm),
    likeness: ["markings", "build"],
  };
  const kinds = Object.entries(lists).map(([kind, list]) => [
    kind,
    Object.fromEntries(list.map((word) => [word, wordIn(kind, word)])),
  ]);
  return { ...(Object.fromEntries(kinds) as SpelledWords), ...ofPlans };
}

const ofPlans: PlanWords = {
  temper: {
    shyer: "shyer than most",
    typical: "as most are",
    bolder: "bolder than most",
    bully: "a bully",
  },
  planting: { none: "none", planted: "planted", "grown-in": "grown in" },
};

function wordIn(kind: string, word: string): string {
  const own: Readonly<Record<string, string>> = Object.hasOwn(said, kind)
    ? (said[kind as WordKind] ?? {})
    : {};
  return (Object.hasOwn(own, word) ? own[word] : undefined) ?? spaced(word);
}
