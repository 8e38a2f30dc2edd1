import type { Measures, Quantity, WordKind, Words } from "../../compatibility";
import { frozen } from "../../frozen";
import { facts } from "../../plan";
import { classLists, traitLabels } from "../../species/inner";
import type { Figure } from "../figure";
import type { ActRule } from "../matters/acts";
import type { PlannedWaterRule, SharedWaterRule } from "../matters/water-rules";
import type { Messages, Told, ToldCondition, ToldRoom, ToldWater } from "./messages";
import {
  beyond,
  sentenceCase as capital,
  choicesOfFood,
  halfUp,
  isMeasurable,
  isUpperEnd,
  isVeryHeavy,
  rightThings,
  saidOnce,
  scientificOf,
  spaced,
  square,
  stopped,
  type Things,
  upwards,
} from "./sentences";

const basis: Messages["basis"] = {
  published: "published",
  curated: "weighed from several sources",
  memory: "recalled, not checked",
  "common-practice": "common practice",
  observed: "observed by a keeper",
  derived: "reckoned from what is nearest known",
};

const ranges: Messages["ranges"] = {
  atLeast: (min, unit) => `at least ${min}${unit}`,
  atMost: (max, unit) => `at most ${max}${unit}`,
  between: (min, max, unit) => `${min} to ${max}${unit}`,
  below: (min) => `below ${min}`,
  above: (max) => `above ${max}`,
  outside: (span) => `outside ${span}`,
  across: (length, width, unit) => `${length} × ${width}${unit}`,
};

type WordOf<Kind extends WordKind> = { readonly value: Words[Kind] } | undefined;

/** What several of a name are called: `guppies`, `neon tetras`, `blue forms of the red zebra`, `bronze corydoras`. */
function plural(name: string): string {
  const [first = name, ...further] = name.split(" of ");
  if (further.length > 0) return [plural(first), ...further].join(" of ");
  if (!/[a-z]$/.test(name) || /(?:fish|[^s]s|[^o]x|koi|goi|ogon|ii|eri)$/.test(name)) return name;
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`;
  return /(?:ch|sh|[sxz])$/.test(name) ? `${name}es` : `${name}s`;
}

/** The verb that agrees. */
const verb = (many: boolean, one: string, several: string) => (many ? several : one);
const they = (many: boolean) => verb(many, "it", "they");
const them = (many: boolean) => verb(many, "it", "them");
const their = (many: boolean) => verb(many, "its", "their");

/** How a figure of each kind of water is said. */
const at = {
  temperature: (figure: string) => figure,
  pH: (figure: string) => `a pH of ${figure}`,
  hardness: (figure: string) => `a hardness of ${figure}`,
  salinity: (figure: string) => `a salinity of ${figure}`,
};

/** At a figure, or at least or at most one. */
const held = ({ wanted, min, max }: Pick<ToldCondition, "wanted" | "min" | "max">) =>
  min === undefined || max === undefined ? wanted : `at ${wanted}`;

function sharedWater(water: keyof typeof at) {
  return ({ weight, from, fromMany, to, oneKind, measures, figure }: Told<Measures[SharedWaterRule]>) => {
    const shared = at[water](figure(measures.shared));
    if (weight === "favourable") return `${shared} ${oneKind ? `suits ${to}` : `suits ${from} and ${to}`}.`;
    const each =
      `${from} ${verb(fromMany, "is", "are")} kept at ${at[water](figure(measures.from))}, ${to} at ${figure(measures.to)}`.replaceAll(
        " at at ",
        " at ",
      );
    if (weight === "restricting") {
      return measures.shared ? `${each}.` : `${each}: one end has to give way a little.`;
    }
    if (weight === "blocking" && measures.shared)
      return `${each}: they share only ${shared}, which one bears but does not thrive in.`;
    return weight === "blocking"
      ? `${each}: no ${water} suits both.`
      : `${each}: whether both can be kept at one ${water} nobody has said.`;
  };
}

function plannedWater(water: keyof typeof at) {
  return ({ weight, from, fromMany, measures, figure }: Told<Measures[PlannedWaterRule]>) => {
    const { kept, optimum, planned, hottest, coolest, limit } = measures;
    const known = planned ?? hottest ?? coolest;
    const season = (hottest && " on the hottest day") ?? (coolest && " in the coolest season") ?? "";
    const plan = known ? `; yours is ${figure(known, kept)}${season}` : "";
    if (optimum)
      return `${from} ${verb(fromMany, "does", "do")} best at ${at[water](figure(optimum))}${plan}.`;
    const text = `${from} ${isUpperEnd(kept) ? verb(fromMany, "bears", "bear") : verb(fromMany, "needs", "need")} ${at[water](figure(kept, known))}${plan}`;
    if (weight === "advisory" && season)
      return `${text}, which ${they(fromMany)} ${verb(fromMany, "bears", "bear")} for a while, not for good.`;
    if (weight === "advisory") return `${text}, at the edge of what ${they(fromMany)} can take for long.`;
    return limit
      ? `${text}; ${beyond(limit, figure, ranges)} ${they(fromMany)} ${verb(fromMany, "suffers or dies", "suffer or die")}.`
      : `${text}.`;
  };
}

const yours = (is: string, figure: string) => figure && `; yours ${is} ${figure}`;

const deeds: Readonly<Record<Words["does"], readonly [one: string, several: string]>> = {
  chases: ["chases", "chase"],
  bites: ["bites", "bite"],
  kills: ["kills", "kill"],
  "nips-fins": ["bites pieces out of the fins of", "bite pieces out of the fins of"],
  "rasps-mucus": ["rasps the slime coat of", "rasp the slime coat of"],
  "robs-food": ["takes food from", "take food from"],
};

const occasions: Readonly<Record<Words["when"], (many: boolean) => string>> = {
  always: () => "",
  breeding: (many) => ` while ${they(many)} ${verb(many, "breeds", "breed")}`,
  "guarding-brood": (many) => ` while ${they(many)} ${verb(many, "guards", "guard")} eggs or young`,
  feeding: () => " at food",
  crowded: () => " where there is no room to get out of sight",
};

/** Animals of one sex among those named; of one animal its name. */
const sexed = (sex: Words["sex"] | undefined, who: string, many: boolean) =>
  sex && many ? `${sex} ${who}` : who;

type Harming = Pick<Told<unknown>, "fromMany" | "ownToo" | "oneKind" | "to">;

/** Others, and whom they stand beside of the kind of those that harm them, if these are harmed too. */
const ownToo = ({ fromMany, ownToo: isOwnToo }: Pick<Harming, "fromMany" | "ownToo">, others: string) =>
  isOwnToo ? `${their(fromMany)} own kind${others.includes(" and ") ? "," : " and"} ${others}` : others;

/** Whom some harm: their own kind, others, or both. */
const harmed = (told: Harming) => (told.oneKind ? `${their(told.fromMany)} own kind` : ownToo(told, told.to));

function act(whom: (told: Told<Measures[ActRule]>) => string) {
  return (told: Told<Measures[ActRule]>) => {
    const { act: deed, doer, once, when } = told.measures;
    const { from, fromMany: many, again } = told;
    const [harms, harm] = deed ? deeds[deed.value] : ["harms", "harm"];
    const who = sexed(doer?.value, from, many);
    const harmed = ownToo(told, whom(told));
    const isAnyway = deed?.value === "robs-food" || (told.weight === "blocking" && when?.value === "crowded");
    const occasion = when && !isAnyway ? occasions[when.value](many) : "";
    const isLasting = told.weight === "blocking" && deed?.value === "chases";
    const lasting = isLasting ? `, which cannot get away from ${them(many)}` : "";
    return `${once ? "once grown, " : ""}${again ? `${they(many)} also` : who} ${verb(many, harms, harm)} ${harmed}${occasion}${lasting}.`;
  };
}

const airs: Readonly<Record<Words["airBreathing"], string>> = {
  none: "never takes air",
  facultative: "takes air when the water holds little oxygen",
  obligate: "drowns without air from the surface",
};

const statuses: Readonly<Record<Words["conservation"], string>> = {
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

const holders: Readonly<Record<Words["territoryHolder"], string>> = {
  male: "each male",
  female: "each female",
  pair: "a pair",
  each: "each animal",
};

/** `male oscars each defend`, `the oscar defends`, `a breeding pair of oscars defends`. */
function holder(of: WordOf<"territoryHolder">, who: string, many: boolean): string {
  if (!many) return `${who} defends`;
  if (of?.value === "pair") return `each breeding pair of ${who} defends`;
  return `${of && of.value !== "each" ? `${of.value} ` : ""}${who} each defend`;
}

const parts: Readonly<Record<Words["zone"], string>> = {
  surface: "near the surface",
  midwater: "in open water",
  bottom: "on the ground",
};

const whereabouts = (zone: WordOf<"zone">) => (zone ? parts[zone.value] : "in the same part of the tank");

/** `keep no more than 1 male swordtail`, `keep no male swordtail`. */
function noMoreThan({ max, one, several, figure }: ToldCondition, sex = ""): string {
  if (max === 0) return `keep no ${sex}${one}`;
  const most: Quantity | undefined = max === undefined ? undefined : { value: max };
  return `keep no more than ${figure(most)} ${sex}${max === 1 ? one : several}`;
}

/** What the spines of a family are like. */
const spinesOf: Readonly<Record<string, string>> = {
  Botiidae: "one folds out under each eye",
  Cobitidae: "one folds out under each eye",
  Loricariidae: "on cheeks and fins",
  Callichthyidae: "a prick smarts, and the family has venom glands",
};

/** Catfishes whose sting hurts for hours; what else has venom is for trained hands. */
const stinging: ReadonlySet<string> = new Set(["Clariidae", "Mochokidae", "Pimelodidae"]);

const hazards: Messages["hazards"] = (hazard, of) => {
  const named = allOf(of.map(({ who }) => who));
  if (hazard === "bite") return `Bites: ${named}. Keep hands out of reach; a deep wound is for a doctor.`;
  if (hazard === "shock")
    return `Electric shocks that a person feels: ${named}. Keep hands out of the water.`;
  if (hazard === "spines") {
    const told = of.map(({ who, family }) => {
      const like = Object.hasOwn(spinesOf, family) && spinesOf[family];
      return like ? `${who} (${like})` : who;
    });
    return `Spines: ${allOf(told)}. Use a tub, not hand or net; a wound that hurts badly, swells or does not heal is for a doctor.`;
  }
  const trained = of.every(({ family }) => stinging.has(family)) ? "" : "only for trained hands, ";
  return `Venom: ${named}; ${trained}never to be touched with bare hands. After a sting seek medical care at once, and call emergency help if breathing, chest or heart are affected.`;
};

/** How long those are that are measurably long. */
const shownLength = (length: Figure | undefined, figure: (length: Figure | undefined) => string) =>
  isMeasurable(length) ? ` of ${figure(length)}` : "";

function predation(told: Told<Measures["predation"]>): string {
  const { from, fromMany, to, toMany, oneKind, weight, measures, figure } = told;
  const { of, prey, hunter, greatestPrey, safeFrom, hunts, defence } = measures;
  const eats = verb(fromMany, "eats", "eat");
  if (of?.value === "egg")
    return `${from} ${verb(fromMany, "feeds", "feed")} by night and may eat the eggs that ${to} ${verb(toMany, "guards", "guard")}.`;
  if (of)
    return oneKind || from === to
      ? `${from} ${eats} ${their(fromMany)}${oneKind ? " own" : ""} young.`
      : `${from} ${eats} the young of ${to}.`;
  const takes = greatestPrey
    ? `${verb(fromMany, "takes", "take")} prey of up to about ${figure(greatestPrey)}`
    : hunter && `${verb(fromMany, "grows", "grow")} to ${figure(hunter)}`;
  if (safeFrom) {
    if (oneKind)
      return `${from} ${eats} ${their(fromMany)} own kind while it is small; from ${figure(upwards(safeFrom))} on ${they(toMany)} ${verb(toMany, "is", "are")} safe.`;
    const small = prey ? `${to} of ${figure(prey)}` : `small ${to}`;
    return `${told.fromNow && "once grown, "}${from} ${eats} ${small}; from ${figure(upwards(safeFrom))} on ${they(toMany)} ${verb(toMany, "is", "are")} safe.`;
  }
  const size = prey && `${to} ${verb(toMany, "measures", "measure")} ${figure(prey)}`;
  const why = [takes && `${they(fromMany)} ${takes}`, size].filter(Boolean).join(", and ");
  if (oneKind && weight === "advisory")
    return `${from} may try to eat ${their(fromMany)} own kind, and some do.`;
  const night = hunts && !defence ? " by night" : "";
  const spines = defence ? `; the spines of ${to} can choke ${them(fromMany)}` : "";
  const later =
    told.fromNow &&
    `; bought at ${told.fromNow}, ${they(fromMany)} ${verb(fromMany, "seems", "seem")} harmless; grown, ${they(fromMany)} ${verb(fromMany, "is", "are")} not`;
  if (weight !== "advisory") return `${from} ${eats} ${to}${night}${why && `: ${why}`}${spines}${later}.`;
  const stated = greatestPrey
    ? `prey of about ${figure(greatestPrey)} is the largest that is told of`
    : hunter && `${they(fromMany)} ${verb(fromMany, "grows", "grow")} to ${figure(hunter)}`;
  const known = [stated, size].filter(Boolean).join(", and ");
  return `${from} may try to eat ${to}${night}, and some do${known && `: ${known}`}${spines}.`;
}

function footprint({ from, fromMany, weight, measures, figure }: Told<Measures["footprint"]>): string {
  const { length, width, needed, planned } = measures;
  if (length)
    return `${from} ${verb(fromMany, "grows", "grow")} to ${figure(length)} and cannot turn in a tank ${figure(width)} wide.`;
  const text = `${from} ${verb(fromMany, "needs", "need")} a floor of ${figure(needed, planned)}${yours("has", figure(planned, needed))}.`;
  if (weight === "advisory") return `${text} ${hardlyLess}`;
  return weight === "blocking" ? `This tank is far too small: ${text}` : text;
}

/** Of room that falls short by less than the figures can tell. */
const hardlyLess = "That is hardly less, and more would be better.";

/** `goldfish need a tank of about 150 × 60 cm; yours is 30 × 20 cm`. */
function room({ weight, who, many, growing, grownTo, ...told }: ToldRoom): string {
  const { neededSides, exampleSides, neededLength, neededFloor, ownSides, ownLength, ownFloor } = told;
  const needed = neededSides
    ? `a tank of about ${neededSides}`
    : neededFloor
      ? `a floor as large as ${exampleSides}`
      : `a tank at least ${neededLength} long`;
  const own =
    ownSides && neededFloor ? `; yours is ${ownSides}` : yours("is", neededFloor ? ownFloor : ownLength);
  const needs = `${verb(many, "needs", "need")} ${needed}${own}.`;
  const size = growing ? ["grown", grownTo].filter(Boolean).join(" to ") : grownTo && `${grownTo} long`;
  const grown = [size, they(many)].filter(Boolean).join(", ");
  if (weight === "blocking") return `This tank is far too small for ${who}: ${grown} ${needs}`;
  if (!who) return `have ${needed}${own}`;
  return growing ? `${who} will outgrow this tank: ${grown} ${needs}` : `${who} ${needs}`;
}

function oxygen({ from, fromMany, measures, figure }: Told<Measures["oxygen"]>): string {
  const { air, need, hours, temperature, saturation, limit } = measures;
  if (air)
    return `${from} ${verb(fromMany, "drowns", "drown")} unless ${they(fromMany)} can take air at the surface.`;
  if (hours) {
    return `at ${figure(temperature)} water holds ${figure(saturation)} of oxygen; if it stands still, this stock has used it down to ${figure(limit)}, the least for ${from}, within ${figure(hours)}.`;
  }
  if (need?.value === "high")
    return `${from} ${verb(fromMany, "needs", "need")} much oxygen and ${verb(fromMany, "suffers", "suffer")} as soon as the water stands still.`;
  return `on a hot night ${from} may run short of oxygen in still water.`;
}

const plantHarm: Readonly<Record<Words["plantHarm"], readonly [one: string, several: string]>> = {
  eats: ["eats plants", "eat plants"],
  uproots: ["pulls plants out", "pull plants out"],
  digs: ["digs, so that plants loosen", "dig, so that plants loosen"],
};

const feedingPlaces: Readonly<Record<Words["zone"], string>> = {
  surface: "at the surface",
  midwater: "in midwater",
  bottom: "on the ground",
};

const feedingHours: Readonly<Record<Words["light"], string>> = {
  day: "by day",
  dusk: "at dusk",
  night: "after dark",
};

/** How food reaches an animal. */
const feedingWays: Readonly<Record<string, string>> = {
  ...feedingPlaces,
  ...feedingHours,
  apart: "where the quicker ones do not get at it",
};

/** `give neon tetras frozen food where and when they feed`, `let food reach neon tetras after dark`. */
function fedWith({ of, many, words }: ToldCondition): string {
  const { given, reached } = choicesOfFood(words, foods, feedingWays);
  return [
    given.length > 0 &&
      `give ${of} ${anyOf(given)} where and when ${they(many)} ${verb(many, "feeds", "feed")}`,
    reached.length > 0 && `feed ${given.length > 0 ? them(many) : of} ${anyOf(reached)}`,
  ]
    .filter(Boolean)
    .join(", or ");
}

const sensitivities: Readonly<Record<Words["sensitivity"], (who: string, many: boolean) => string>> = {
  copper: (who) => `no copper, as in remedies and algae killers, for ${who}.`,
  salt: (who) => `no salt as a remedy for ${who}.`,
  "ammonia-nitrite": (who) => `do not add ${who} before the filter is ripe.`,
  handling: (who) => `move ${who} in a box of water, not in a net.`,
  "soft-water": (who) => `no soft, acid water for ${who}: shells and moults fail in it.`,
};

const labelOf = (fact: string | undefined) =>
  fact !== undefined && Object.hasOwn(facts, fact) ? facts[fact as keyof typeof facts].label : "one fact";

/** `3 males`, `1 female`; `male` of a single animal, `all female` of several. */
function numbered(animals: number, count: number | undefined, sex: Words["sex"]): string {
  if (animals === count) return count === 1 ? sex : `all ${sex}`;
  return `${animals} ${sex}${animals === 1 ? "" : "s"}`;
}

const listed = (type: "conjunction" | "disjunction") => new Intl.ListFormat("en-GB", { type });

const allOf = (items: readonly string[]) => listed("conjunction").format(items);

const groundOf = (words: { readonly value: readonly Words["ground"][] } | undefined) =>
  anyOf((words?.value ?? []).map(groundWord));

const groundWord = (word: string) => (word === "bare" ? "bare glass" : spaced(word));

/** The facts of a plan in a word or two, and what they are part of. */
const things: Things = {
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

const restsOn: Messages["basis"] = { ...basis, "common-practice": "common practice, not published" };

const anyOf = (choices: readonly string[]) => listed("disjunction").format(choices);

const foods: Readonly<Record<string, string>> = {
  dry: "dry food",
  frozen: "frozen food",
  live: "live food",
  "fallen-insects": "insects on the surface",
  algae: "greens and algae",
  plants: "leaves and vegetables",
  wood: "wood to rasp",
};

/** Words that English says otherwise than the vocabulary. */
const said: { readonly [Kind in WordKind]?: { readonly [Word in Words[Kind]]?: string } } = {
  bodyShape: {
    "eel-like": "like an eel",
    elongated: "slender",
    fusiform: "a spindle",
    "short-deep": "short and deep",
  },
  supply: { mixed: "both", wild: "caught" },
  jumps: { startled: "when frightened" },
  living: { either: "alone or with its kind" },
  light: { day: "by day", dusk: "at dusk", night: "after dark" },
  food: {
    dry: "dry food",
    frozen: "frozen food",
    live: "live food",
    "fallen-insects": "insects on the surface",
  },
  reproduction: {
    "scatters-eggs": "scatters its eggs",
    "guards-eggs": "guards its eggs",
    "bubble-nest": "builds a nest of bubbles",
    livebearer: "bears live young",
    "large-young": "bears few large young",
    "broods-young": "carries its eggs; the young hatch complete",
    "sea-larvae": "larvae need brackish or sea water",
  },
  prey: {
    egg: "eggs",
    shrimplet: "young shrimps",
    shrimp: "shrimps",
    snail: "snails",
    "young-snail": "young snails",
    "young-crayfish": "young crayfish",
    crab: "crabs",
    "young-crab": "young crabs",
    mussel: "mussels",
    frog: "frogs",
    tadpole: "tadpoles",
  },
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
function spelled(): Messages["words"] {
  const lists: Readonly<Record<string, readonly string[]>> = {
    ...classLists,
    basis: Object.keys(basis),
    plantHarm: Object.keys(plantHarm),
  };
  return Object.fromEntries(
    Object.entries(lists).map(([kind, list]) => [
      kind,
      Object.fromEntries(list.map((word) => [word, wordIn(kind, word)])),
    ]),
  ) as Messages["words"];
}

function wordIn(kind: string, word: string): string {
  const own: Readonly<Record<string, string>> = Object.hasOwn(said, kind)
    ? (said[kind as WordKind] ?? {})
    : {};
  return (Object.hasOwn(own, word) ? own[word] : undefined) ?? spaced(word);
}

const waters = ({ temperature, pH, hardness, salinity }: Omit<ToldWater, "kinds" | "current">) =>
  [
    temperature,
    pH && `pH ${pH}`,
    hardness && `hardness ${hardness}${salinity && " before salt"}`,
    salinity && `salinity ${salinity}`,
  ].filter(Boolean);

/** How a share of the tank is seen, which is said once in a sentence. */
const seenFromAbove = ", seen from above,";

const lawsSomewhere = (who: string, entries: number) =>
  `Law: ${entries} ${entries === 1 ? "entry, from the law of one place, names" : "entries, from laws of several places, name"} ${who}. Say where your tank stands to read what applies; the text in force decides.`;

/** The report in English. */
export const english: Messages = /* @__PURE__ */ frozen(/* @__PURE__ */ messages());

function messages(): Messages {
  return {
    language: "en-GB",
    several: plural,
    theOthers: "all the others",
    this: (name) => `the ${name}`,
    headline: (told) => {
      const { outcome, clash, otherWater, individuals } = told;
      const { oneSpecies, oneGroup, animals, warned, amiss } = told;
      const together = warned ? "can live together" : "go well together";
      if (clash) return `Unsuitable: keep either ${clash[0]} or ${clash[1]}, not both.`;
      if (otherWater) return `Not in this water: ${otherWater.replace("the water", "it")}.`;
      if (individuals)
        return `Nobody can tell: it depends on the individuals (${individuals}). Try it only with another place ready.`;
      if (told.tooSmall) return "Unsuitable: the tank is far too small.";
      return {
        suitable: oneGroup
          ? `Suitable: ${warned ? "a plan that will do" : "a good plan"} for ${animals}.`
          : `Suitable: ${animals} ${oneSpecies ? "get on among themselves" : together}.`,
        conditional: "Conditional: it works once the things below are right.",
        unsuitable:
          oneSpecies || amiss
            ? `Unsuitable: do not keep ${oneSpecies ? "them" : amiss} like this.`
            : "Unsuitable: do not keep these together.",
        undetermined: "Undetermined: something that decides it is not known.",
      }[outcome];
    },
    bounds: (atBest, atWorst, outcome, why) => {
      const told = {
        suitable: "nothing speaks against it",
        conditional: "something would have to change",
        unsuitable: "it is unsuitable",
      };
      const best = atBest !== outcome && `at best ${told[atBest as keyof typeof told]}`;
      const worst = atWorst !== outcome && `at worst ${told[atWorst as keyof typeof told]}`;
      const doubts = {
        individual: "individuals differ much",
        disputed: "sources differ",
        missing: "not all of it is known",
      };
      const reason = worst && why.length > 0 && `: ${allOf(why.map((doubt) => doubts[doubt]))}`;
      return `${capital([best, worst].filter(Boolean).join(", "))}${reason || ""}.`;
    },
    lawFirst: (whom) =>
      `The law where the tank stands names ${whom}: read below what it says before you buy or pass on any.`,
    measureFirst: (first) =>
      `Measure or settle first: ${allOf([...new Set(first.map((fact) => things[fact][0]))])}.`,
    titles: {
      parties: "Animals",
      blocking: "Why not",
      restricting: "What must change",
      besides: "What would have to change besides",
      unsaid: "Not in your plan yet: see that it is so",
      deciding: "What nobody can tell",
      advisory: "Worth knowing",
      favourable: "In favour",
      watchFor: "Watch for",
      meanwhile: "Meanwhile watch for",
      everyTank: "In every tank",
      remedy: "What would help",
      remedies: "What would help: one of these is enough",
      ifItStarts: "If bullying starts",
      cautions: "Take care",
    },
    party: ({ name, several, scientific, count, males = 0, females = 0, sex, stage, temper, length }) => {
      const known = males + females;
      const rest = (count ?? 0) - known;
      const sexes = [
        males > 0 && numbered(males, count, "male"),
        females > 0 && numbered(females, count, "female"),
        known > 0 && rest > 0 && `${rest} not sexed`,
      ].filter(Boolean);
      const young = stage === "juvenile" ? "young" : stage;
      const size = length && `${length} long${stage === "juvenile" ? " as bought" : ""}`;
      const nature =
        temper &&
        {
          shyer: count === 1 ? "a shy one" : "shy ones",
          bolder: count === 1 ? "a bold one" : "bold ones",
          bully: count === 1 ? "a bully" : "bullies among them",
        }[temper];
      const detail = [sexes.length > 0 ? sexes.join(" and ") : sex, young, size, nature]
        .filter(Boolean)
        .join(", ");
      const further = [name === scientific ? "" : scientific, detail].filter(Boolean).join("; ");
      return [count, count === 1 ? name : several, further && `(${further})`].filter(Boolean).join(" ");
    },
    rules: {
      temperature: sharedWater("temperature"),
      ph: sharedWater("pH"),
      "general-hardness": sharedWater("hardness"),
      salinity: sharedWater("salinity"),
      season: ({ from, fromMany, to, toMany, measures, figure }) =>
        `${from} ${verb(fromMany, "needs", "need")} ${figure(measures.season)} in the coolest season to thrive, too cold for ${to}${measures.to ? `, which ${verb(toMany, "is", "are")} kept at ${figure(measures.to)}` : ""}.`,
      flow: ({ weight, from, to, oneKind }) => {
        if (weight !== "favourable")
          return `${from} and ${to} need different currents, each a place of its own.`;
        return oneKind ? `one current suits ${to}.` : `one current suits ${from} and ${to}.`;
      },
      predation: (told) => predation(told),
      "acts-own-kind": (told) => {
        const { inDoubt, from, fromMany, measures } = told;
        const own = `${their(fromMany)} own kind`;
        if (!inDoubt) return act(() => own)(told);
        return `${sexed(measures.doer?.value, from, fromMany)} may not bear ${own}, whatever room ${they(fromMany)} ${verb(fromMany, "has", "have")}.`;
      },
      "acts-look-alike": act(
        ({ to, toMany, fromMany }) =>
          `${to}, which ${verb(toMany, "looks", "look")} like ${their(fromMany)} own kind`,
      ),
      "acts-others": act(({ to }) => to),
      "fin-nipping": (told) => {
        const { weight, from, fromMany, measures } = told;
        const to = harmed(told);
        if (measures.hunts)
          return `${from} may bite pieces out of the fins of ${to} that sleep, for ${they(fromMany)} ${verb(fromMany, "is", "are")} about by night.`;
        if (measures.feeds)
          return `${from} may bite pieces out of the fins of ${to}, for ${they(fromMany)} ${verb(fromMany, "feeds", "feed")} ${whereabouts(measures.feeds)} too.`;
        const text = `${from} ${verb(fromMany, "bites", "bite")} pieces out of the fins of ${to}`;
        if (weight === "blocking") return `${text}: choose company that does not nip.`;
        return weight === "advisory" ? `${text} now and then.` : `${text}.`;
      },
      "mucus-grazing": (told) => {
        const { weight, from, fromMany, measures } = told;
        const to = harmed(told);
        if (measures.fed)
          return `${from} may rasp the slime coat off the flanks of ${to} even where ${they(fromMany)} ${verb(fromMany, "is", "are")} well fed.`;
        const text = `${from} ${verb(fromMany, "rasps", "rasp")} the slime coat off the flanks of ${to}`;
        return weight === "advisory" ? `${text} where there is too little to graze.` : `${text}.`;
      },
      "territory-contest": ({ from, to, measures }) =>
        `${from} and ${to} both defend a place ${whereabouts(measures.zone)}.`,
      "size-and-pace": ({ from, fromMany, to, measures, figure }) =>
        `${from}, ${figure(measures.longer)} long, ${verb(fromMany, "leaves", "leave")} ${to}${shownLength(measures.shorter, figure)} no rest.`,
      "feeding-competition": ({ from, fromMany, to, toMany }) =>
        `${from} ${verb(fromMany, "has", "have")} eaten before ${to} ${verb(toMany, "gets", "get")} to the food.`,
      shyness: ({ from, to }) => `the bustle of ${to} keeps ${from} in hiding.`,
      interbreeding: ({ weight, from, to }) =>
        weight === "advisory"
          ? `${from} and ${to} cross: pass on no young, or keep only one of them.`
          : `${from} and ${to} cross, and their young are hybrids: keep only one of them.`,
      furnishing: ({ weight, from, fromMany, to, measures, figure }) => {
        const { cover, openWater, harm } = measures;
        if (harm)
          return `one of ${from} and ${to} ${plantHarm[harm.value][0]}, and the other cannot do without them${weight === "advisory" ? ": plant tough ferns and moss" : ""}.`;
        if (cover)
          return `${from} and ${to} together ask for cover over ${figure(cover)} of the tank seen from above and for ${figure(openWater)} free to swim in: no tank has both.`;
        return `${from} ${verb(fromMany, "needs", "need")} ${groundOf(measures.from)} on the ground, ${to} ${groundOf(measures.to)}.`;
      },
      "conditions-exclude": ({ from, to, measures: { one, other } }) => {
        const who = allOf([...new Set([from, to].filter(Boolean))]);
        const asked = [...new Set([labelOf(one?.value), labelOf(other?.value)])];
        return `no tank meets all that is asked${who && ` by ${who}`}: ${allOf(asked)}.`;
      },
      "water-temperature": plannedWater("temperature"),
      "water-ph": plannedWater("pH"),
      "water-hardness": plannedWater("hardness"),
      "water-salinity": plannedWater("salinity"),
      oxygen: (told) => oxygen(told),
      "filter-nitrogen": () => "the filter has to take up the ammonia of the stock, grown and fed plenty.",
      height: ({ weight, from, fromMany, measures, figure }) => {
        const tank = `a tank ${figure(measures.needed, measures.planned)} high${yours("is", figure(measures.planned, measures.needed))}`;
        return weight === "advisory"
          ? `${from} ${verb(fromMany, "does", "do")} better in ${tank}.`
          : `${from} ${verb(fromMany, "needs", "need")} ${tank}.`;
      },
      zones: ({ weight, from, fromMany, measures, figure }) => {
        if (weight === "restricting")
          return `${from} ${verb(fromMany, "shares", "share")} the room ${whereabouts(measures.zone)}, where what each needs adds up.`;
        const text = `${from} ${verb(fromMany, "lives", "live")} ${whereabouts(measures.zone)}, and all that live there need a floor of ${figure(measures.needed, measures.planned)}${yours("has", figure(measures.planned, measures.needed))}.`;
        if (weight === "advisory") return `${text} ${hardlyLess}`;
        return weight === "blocking" ? `This tank is far too small: ${text}` : text;
      },
      territories: ({ from, fromMany, measures, figure }) =>
        `${holder(measures.holder, from, fromMany)} a place of about ${figure(square(measures.area))} ${whereabouts(measures.zone)}, out of sight of rivals.`,
      "open-water": ({ from, fromMany, measures, figure }) =>
        `${from} ${verb(fromMany, "needs", "need")} ${figure(measures.needed)} of the tank, seen from above, free to swim in.`,
      ground: ({ from, fromMany, measures }) =>
        `${from} ${verb(fromMany, "needs", "need")} ${groundOf(measures.needed)} on the ground.`,
      "hiding-places": ({ from, fromMany, measures, figure }) =>
        `${from} ${verb(fromMany, "hides", "hide")} in ${anyOf((measures.kinds?.value ?? []).map(spaced))}: have at least ${figure(measures.needed)} of them${measures.own ? " for all that use them" : ""}.`,
      sensitive: ({ from, fromMany, again, measures }) =>
        sensitivities[measures.to?.value ?? "handling"](again ? them(fromMany) : from, fromMany),
      "plants-at-risk": ({ from, fromMany, measures }) =>
        `${from} ${verb(fromMany, ...plantHarm[measures.harm?.value ?? "eats"])}.`,
      feeding: ({ from, fromMany, measures }) => {
        const places = measures.places?.value.map((place) => feedingPlaces[place]) ?? [];
        const hours = measures.hours?.value.map((hour) => feedingHours[hour]) ?? [];
        return `${from} ${verb(fromMany, "feeds", "feed")} ${allOf(places)}, ${allOf(hours)}: what others are given may not reach ${them(fromMany)}.`;
      },
      "longest-run": ({ from, fromMany, weight, measures, figure }) => {
        const text = `${from} ${verb(fromMany, "needs", "need")} a tank ${figure(measures.needed, measures.planned)} long${yours("is", figure(measures.planned, measures.needed))}.`;
        if (weight === "advisory") return `${text} ${hardlyLess}`;
        return weight === "blocking" ? `This tank is far too short: ${text}` : text;
      },
      footprint: (told) => footprint(told),
      "carbon-dioxide": ({ measures: { pH, hardness, dissolved, limit }, figure }) =>
        `At a pH of ${figure(pH)} and a carbonate hardness of ${figure(hardness)} this water would hold some ${figure(dissolved)} of carbon dioxide; from ${figure(limit)} on fish may gasp: move the surface, and measure both again, for other acids, as of peat, mislead.`,
      "cool-season": ({ from, fromMany, measures, figure }) =>
        `${from} ${verb(fromMany, "needs", "need")} ${figure(measures.season)} in the coolest season to thrive.`,
      "group-size": ({ from, fromMany, weight, measures: { needed, planned, fewer }, figure }) => {
        const { max } = needed as Figure;
        if (weight === "advisory")
          return `${from} live ${max === 1 ? "alone" : `at most ${max} together`}; you plan ${figure(planned)}.`;
        if (fewer)
          return `${from} do badly in a group of ${figure(planned)}: keep ${figure(needed)}, or ${figure(fewer) === "1" ? "one alone" : `no more than ${figure(fewer)}`}.`;
        return `${from} ${verb(fromMany, "needs", "need")} company of ${their(fromMany)} own: keep ${figure(needed)}; you plan ${figure(planned)}.`;
      },
      "sex-ratio": ({ weight, from, measures, figure }) => {
        const needed = figure(measures.needed);
        const text = `keep at least ${needed} ${needed === "1" ? "female" : "females"} to each male of ${from}`;
        return weight === "advisory"
          ? `${text}, once you can tell them apart.`
          : `${text}, or the males wear them out.`;
      },
      cover: ({ from, fromMany, measures, figure }) =>
        `${from} ${verb(fromMany, "needs", "need")} cover over ${figure(measures.needed)} of the tank, seen from above.`,
      plants: ({ from, fromMany }) =>
        `${from} ${verb(fromMany, "does", "do")} well only among plants that have grown in.`,
      "settling-company": ({ from, fromMany, weight, measures, figure }) => {
        const cover = `cover over ${figure(measures.cover)} of the tank, seen from above, settles`;
        return weight === "advisory"
          ? `${cover} ${from}, more slowly than calm fish in the open water.`
          : `${from} ${verb(fromMany, "is shy and comes", "are shy and come")} out beside calm fish; ${cover} ${them(fromMany)} too, more slowly.`;
      },
      lid: ({ from, fromMany, weight }) =>
        weight === "restricting"
          ? `${from} ${verb(fromMany, "leaves", "leave")} an open tank: cover it without a gap.`
          : `${from} may leap when frightened: a lid is safer.`,
      "flow-places": ({ from, fromMany, measures: { calmest, strongest } }) =>
        `${from} ${verb(fromMany, "needs", "need")} a place with ${[...new Set([calmest?.value, strongest?.value])].filter(Boolean).join(" to ")} current.`,
      "caution-floor": ({ measures: { total }, figure }) =>
        total
          ? `Weight: about ${figure(total)} with glass, gravel and stand. ${isVeryHeavy(total) ? "Ask a structural engineer before you set it up, on any floor." : "Set it across the joists by a bearing wall; on an old or wooden floor, or in doubt, ask a structural engineer."}`
          : `Weight: every ${figure({ value: 100, unit: "L" })} make about ${figure({ value: 125, unit: "kg" })} with glass and stand; on an old or wooden floor ask a structural engineer.`,
      "caution-electricity": () =>
        "Electricity: a residual-current device, cables looped below the socket, plugs out before a hand goes in; wiring is for a licensed electrician.",
      "caution-hazards": ({ from, fromMany, measures }) =>
        hazards(measures.hazard?.value ?? "bite", [
          { who: from, many: fromMany, family: measures.family?.value ?? "" },
        ]),
      "caution-zoonoses": () =>
        "Germs: wash your hands, keep cuts out of the water, tell a doctor about the tank if a sore does not heal; with weak immunity leave it to others.",
      "caution-devices": ({ from, fromMany, measures }) =>
        measures.device?.value === "heater"
          ? `${from} ${verb(fromMany, "burns itself", "burn themselves")} on a bare heater: use a guard, or heat outside the tank.`
          : `${from} ${verb(fromMany, "gets", "get")} into the intake of a pump: cover it with foam.`,
      "caution-law": ({ from, measures: { jurisdiction, effect, instrument, date, basis, laws } }) =>
        laws
          ? lawsSomewhere(from, (laws as Figure).value ?? 1)
          : `Law on ${from}, ${jurisdiction?.value}: ${effect?.value} (${instrument?.value}; ${date?.value}${basis?.value === "memory" ? "; recalled, not read" : ""}.) The text in force decides.`,
      "caution-release": () => "Never release animals, plants or water outdoors: rehome them, or ask a vet.",
    },
    sayWhatToDo: {
      "water-temperature": true,
      "water-ph": true,
      "water-hardness": true,
      "water-salinity": true,
      height: true,
      "open-water": true,
      ground: true,
      "hiding-places": true,
      "group-size": true,
      "sex-ratio": true,
      cover: true,
      plants: true,
      lid: true,
      "flow-places": true,
    },
    room: (told) => room(told),
    sharedWater: ({ kinds, ...told }) => {
      const water = waters(told);
      const whom = kinds === 1 ? "them" : kinds === 2 ? "both" : "all";
      return water.length === 0
        ? `one current suits ${whom}.`
        : `water of ${water.join(", ")} suits ${whom}.`;
    },
    waterToHave: (told) => `Water: ${waters(told).join(", ")}; measure yours first.`,
    hazards,
    lawsSomewhere,
    remedy: {
      rehome: ({ one, several, moved, all, apart, lawful, who, stay = [] }) => {
        const kinds = { males: "male", females: "female", juveniles: "young" };
        const number = moved === 1 ? (all ? "the" : "one") : `${all ? "the " : ""}${moved}`;
        const kept = stay.map((those) => `${those.count} ${kinds[those.who]}`);
        const rest = kept.length > 0 ? `, and keep ${allOf(kept)}` : "";
        return `find ${apart && moved > 1 ? "a tank each" : "another tank"} for ${number} ${who ? `${kinds[who]} ` : ""}${moved === 1 ? one : several}${rest}${lawful ? ", as far as the law allows" : ""}`;
      },
      form: ({ several, form }) => `choose ${several} of this form: ${form}`,
      add: ({ name, several: many, count }) => `add ${count} ${count === 1 ? name : many}, which are calm`,
      water: (told) => `have water of ${waters(told).join(", ")}`,
      tank: (sides, height) => `have a tank of ${sides}${height ? `, ${height} high` : ""}`,
      all: (clauses, outcome) =>
        `${clauses.join("; ")}.${outcome === "conditional" ? " Some conditions remain." : ""}`,
      none: (obstacle) => `Nothing within three steps helps. In the way stands: ${obstacle}`,
    },
    ifItStarts:
      "break lines of sight; take out the bully, not its victim; return it last, into a rearranged tank, and have somewhere to rehome it.",
    otherRule: (id, { from, to }) =>
      [id, [from, to].filter(Boolean).join(" and ")].filter(Boolean).join(": "),
    signs: {
      "torn-fins": "torn fins",
      "damaged-skin": "scraped flanks",
      hiding: "hiding all day",
      "missing-animals": "missing animals",
      thin: "thin animals",
      chasing: "chasing that does not end",
      gasping: "gasping at the surface",
      "missing-young": "missing eggs or young",
    },
    lookFor: (signs, whom) => `${allOf(signs)}${whom && ` (${whom})`}`,
    conditions: {
      "tank.longestRun": ({ wanted }) => `have a tank ${wanted} long`,
      "tank.footprint": ({ wanted }) => `have a floor of ${wanted}`,
      "tank.height": ({ wanted }) => `have a tank ${wanted} high`,
      "tank.openWater": ({ wanted }) => `leave ${wanted} of the tank, seen from above, free to swim in`,
      "tank.substrate": ({ words }) =>
        `have ${anyOf(words.map((word) => groundWord(String(word))))} on the ground`,
      "tank.hides": ({ of, wanted, min }) =>
        `give ${of} ${min === 1 ? "a place" : `${wanted} places`} to hide, sleep or spawn in`,
      "tank.openSurface": ({ wanted }) =>
        `keep ${wanted} of the surface free of leaves, with air between water and lid`,
      "tank.sightBreaks": ({ wanted, min }) =>
        `break the line of sight over the ground with roots, stones or thickets in ${wanted} ${min === 1 ? "place" : "places"}`,
      // Eight weeks: the end of ripening in `filterCapacity`. The foam: media tables, from memory (see `PlannedFilter`).
      "tank.filter.ripeArea": ({ min = 0, figure }) =>
        `have a ripe filter, at work for eight weeks, with about ${figure({ value: Math.max(1, Math.round(min)), unit: "L" })} of coarse foam`,
      "tank.lid": () => "cover the tank without a gap",
      "tank.cover": ({ wanted }) =>
        `cover ${wanted} of the tank, seen from above, with plants, roots or stones`,
      "tank.plants": ({ words }) =>
        words.includes("none") ? "keep no plants that you would miss" : "let the plants grow in first",
      "tank.flow.calmest": ({ words }) => `keep some place calm, with no more than ${words.at(-1)} current`,
      "tank.flow.strongest": ({ words }) => `have at least ${words[0]} current somewhere`,
      "water.temperature": (told) => `keep the water ${held(told)}`,
      "water.hottest": (told) => `keep the water ${held(told)} on the hottest day`,
      "water.coolest": (told) => `keep the water ${held(told)} in the coolest season`,
      "water.pH": ({ wanted }) => `keep the water at a pH of ${wanted}`,
      "water.generalHardness": ({ wanted }) => `keep the water at a hardness of ${wanted}`,
      "water.salinity": ({ wanted }) =>
        `keep the water at a salinity of ${wanted} (grams of sea salt to a kilogram of water)`,
      "group.count": (told) =>
        told.max === undefined
          ? `keep ${told.wanted} ${told.min === 1 ? told.one : told.several}`
          : noMoreThan(told),
      "group.males": (told) => noMoreThan(told, "male "),
      "group.females": (told) => noMoreThan(told, "female "),
      "group.pairs": ({ several }) => `keep ${several} of one sex only, so that none breed`,
      "group.femalesPerMale": ({ several, wanted, min }) =>
        `keep ${wanted} ${min === 1 ? "female" : "females"} to each male of the ${several}`,
      "group.length": ({ several, min, max, figure }) =>
        max === undefined
          ? `buy ${several} that measure ${figure({ min: halfUp(min ?? 0), unit: "cm" })}`
          : `choose ${several} that do not grow beyond ${figure({ value: max, unit: "cm" })}`,
      "group.longFins": ({ several }) => `choose a form of ${several} with short fins`,
      "group.sex": ({ several, words }) => `keep ${words.join(" or ")} ${several} only`,
      "group.form": ({ several, words }) =>
        `choose ${several} of this form: ${anyOf(words.map((word) => spaced(String(word))))}`,
      "group.grown": ({ several }) => `keep only young ${several}, and move them out before they are grown`,
      "group.offerings": (told) => fedWith(told),
      "group.company": ({ several }) =>
        `keep calm fish in the open water that neither eat ${several} nor are eaten by them`,
    },
    demand: (clauses, reasons) => {
      const clause = saidOnce(clauses.join("; "), seenFromAbove);
      const [first, ...further] = reasons;
      const isPlain = further.length === 0 && !/[:;.] |;/.test(clause + first?.slice(0, -1));
      if (first && isPlain) return `${clause}: ${first}`;
      return [`${clause}.`, ...reasons.map(capital)].join(" ");
    },
    gathered: (sentences) =>
      sentences.map((text, index) => (index < sentences.length - 1 ? stopped(text, ";") : text)).join(" "),
    basis,
    supported: (reason, of) => stopped(reason, ` (${{ ...basis, derived: "reckoned" }[of]}).`),
    unlessMarked: (of, marks) =>
      `Unless marked, this is ${restsOn[of]}${marks.has("derived") ? "; reckoned means worked out from what is nearest known" : ""}.`,
    traits: traitLabels,
    open: {
      missing: (missing, of) => `${of}, ${allOf(missing)}`,
      disputed: (trait, of, values, planned) => {
        const said = values.map((value) => value.replaceAll("; ", ", "));
        const others = said.some((value) => /, | but /.test(value)) ? ", or " : " or ";
        const yours = planned && ` (yours ${planned})`;
        return `${of}, ${[trait.replace("general ", ""), said.join(others)].filter(Boolean).join(" ")}${yours}`;
      },
      notGiven: (inputs, of) =>
        `${allOf([...new Set(inputs.map((input) => facts[input].label))])}${of && ` (${of})`}`,
      outsideDomain: (of) => of || "the tank",
      individual: (of) => of,
      all: (reason, questions, weight, further) => {
        const more = further > 0 ? `; and ${further} more` : "";
        const listed = reason === "individual" ? allOf(questions) : questions.join("; ");
        const bad = weight === "blocking";
        const said = {
          missing: `not known${bad ? ", and it could rule it out" : ""}: ${listed}`,
          disputed: `sources differ${bad ? ", and it could rule it out" : ""}: ${listed}`,
          "not-given": `your plan does not say: ${listed}`,
          "outside-domain": `outside the range in which the equation holds: ${listed}`,
          individual: `individuals differ much${bad ? ", and a rough one could rule it out" : ""}: ${listed}`,
        }[reason];
        return `${said}${more}.`;
      },
    },
    alreadyRight: (right, wrong) => `right as planned: ${allOf(rightThings(things, right, wrong))}.`,
    closing: "Advice about typical animals; individuals vary: watch them, and have a second tank ready.",
    withoutCautions:
      "Whether animals can hurt people, and what the law says of them, only the report on a plan tells: see to it before you buy.",
    keptDown: (wounds) => `room and cover as planned should keep this down: ${wounds}`,
    beforeUnit: " ",
    ranges,
    units: {
      "%": "%",
      cm: "cm",
      cm2: "cm²",
      m2: "m²",
      L: "L",
      kg: "kg",
      in: "in",
      in2: "sq in",
      ft2: "sq ft",
      lb: "lb",
      "gal-us": "US gal",
      "gal-imp": "imp gal",
      degC: "°C",
      degF: "°F",
      dH: "°dH",
      "mg/L-CaCO3": "ppm",
      "g/kg": "g/kg",
      "mg/L": "mg/L",
      h: "hours",
      d: "days",
      mo: "months",
      a: "years",
    },
    unitsOfOne: { h: "hour", d: "day", mo: "month", a: "year" },
    words: spelled(),
    profile: {
      columns: ["trait", "value", "also said", "support"],
      sections: {
        origin: "Origin",
        size: "Size",
        water: "Water",
        space: "Space",
        temperament: "Temperament",
        social: "Social",
        appearance: "Appearance",
        diet: "Diet",
        predation: "Predation",
        reproduction: "Reproduction",
        effects: "Effects",
        care: "Care",
      },
      yes: "yes",
      no: "no",
      none: "none",
      figure: (span, meaning) => {
        if (!meaning) return span;
        return meaning === "limit" ? `suffers or dies ${span}` : `${meaning} ${span}`;
      },
      length: (size, { measure, as, sex }) =>
        `${size} ${measure === "unstated" ? "measure unstated" : measure} (${[as, sex].filter(Boolean).join(", ")})`,
      values: {
        "care.rehoming": ({ en }) => en,
        "origin.conservation": ({ status, year }) =>
          [statuses[status], year && `(${year})`].filter(Boolean).join(" "),
        "size.lengthWeight": ({ a, b }) => `${a} × length ^ ${b}`,
        "water.flow": ({ min, max }) => (min === max ? min : `${min} to ${max}`),
        "water.airBreathing": ({ kind, from }) =>
          [airs[kind], from && `from ${from}`].filter(Boolean).join(" "),
        "size.lifespan": ({ usual, greatest }, size) =>
          [usual && size(usual), greatest && `at most ${size(greatest)}`].filter(Boolean).join(", "),
        "water.coolSeason": (season, size) =>
          season === "none"
            ? season
            : [size(season), season.months && `for ${season.months} months`].filter(Boolean).join(" "),
        "space.baseLength": (needed, size) => `${size(needed.least)} for ${needed.for}`,
        "space.footprint": (needed, size) => `${size(needed.least)} for ${needed.for}`,
        "space.hides": ({ anyOf, each, holder, sharedBy = 1 }) =>
          [
            `${anyOf.map(spaced).join(" or ")}, ${each} for ${holders[holder]}`,
            sharedBy > 1 && `${sharedBy} share one`,
          ]
            .filter(Boolean)
            .join(", "),
        "space.territory": (held, size) =>
          held === "none" ? held : `${size(held.area)} ${parts[held.zone]}, held by ${holders[held.holder]}`,
        "social.group": ({ least, avoid }) =>
          `at least ${least}${avoid ? ` (${avoid.min} to ${avoid.max} do worst)` : ""}`,
        "appearance.looks": ({ tag, sex }) =>
          [said.look?.[tag] ?? spaced(tag), sex && `(${sex}s)`].filter(Boolean).join(" "),
        "temperament.acts": ({ doer, does, target, when, from }) =>
          [
            doer && `${doer}s`,
            deeds[does][1],
            said.target?.[target] ?? spaced(target),
            when && when !== "always" && occasions[when](true).trim(),
            from && `(from ${from} on)`,
          ]
            .filter(Boolean)
            .join(" "),
        "predation.eats": ({ prey, greatest }, size) =>
          [said.prey?.[prey] ?? spaced(prey), greatest && `up to ${size(greatest)}`]
            .filter(Boolean)
            .join(" "),
        "reproduction.interbreedsWith": scientificOf,
      },
    },
    pictures: {
      shared: (figure, known, of) =>
        known < of ? `Common to the ${known} of ${of} with figures: ${figure}.` : `Common to all: ${figure}.`,
      apart: (one, other) => `Nothing is common to all: ${one} and ${other} lie apart.`,
      unknown: "not known",
      eitherSex: (figure) => `${figure} (either sex)`,
      setAside: "set aside",
      marks: {
        kept: "kept at",
        standIn: "best at; nobody has said what it is kept at",
        optimum: "best at",
        limit: "limit: beyond it the animal suffers or dies",
        open: "no end stated",
        shared: "common to all with figures",
        source: "what one source says; its meaning stands beside it",
        outline: "usual adult, length and depth to scale",
        bar: "usual adult length; depth not known",
        greatest: "greatest length known",
        greatestOfEither: "greatest length known, of either sex",
        onlyGreatest: "greatest length; the usual one is not known",
        reckoned: "total length from the dotted line on, reckoned from another measure",
      },
    },
  };
}
