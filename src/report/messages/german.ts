import type { Measures, WordKind, Words } from "../../compatibility";
import { frozen } from "../../frozen";
import type { FactName } from "../../plan";
import type { Figure } from "../figure";
import type { ActRule } from "../matters/acts";
import type { PlannedWaterRule, SharedWaterRule } from "../matters/water-rules";
import { effectIn, jurisdictionIn } from "./german-laws";
import { severalOf, singleOf } from "./german-names";
import { regionIn } from "./german-regions";
import { grounds, groundsHad, places, prey, targets } from "./german-words";
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

// Names stand as subjects or objects, never after a preposition that asks for another case. Nobody is addressed.

const ranges: Messages["ranges"] = {
  atLeast: (min, unit) => `mindestens ${min}${unit}`,
  atMost: (max, unit) => `höchstens ${max}${unit}`,
  between: (min, max, unit) => `${min} bis ${max}${unit}`,
  below: (min) => `unter ${min}`,
  above: (max) => `über ${max}`,
  outside: (span) => `außerhalb von ${span}`,
  across: (length, width, unit) => `${length} × ${width}${unit}`,
};

const basis: Messages["basis"] = {
  published: "veröffentlicht",
  curated: "aus mehreren Quellen abgewogen",
  memory: "aus dem Gedächtnis, ungeprüft",
  "common-practice": "gängige Praxis",
  observed: "von Haltern beobachtet",
  derived: "aus dem Nächstbekannten erschlossen",
};

const exact = (value: number) => value.toLocaleString("de", { maximumSignificantDigits: 6 });

type WordOf<Kind extends WordKind> = { readonly value: Words[Kind] } | undefined;

/** The verb that agrees. */
const verb = (many: boolean, one: string, several: string) => (many ? several : one);
const needs = (many: boolean) => verb(many, "braucht", "brauchen");
/** They need a figure; where only its upper end is told, they bear it. */
const asks = (figure: Figure | undefined, many: boolean) =>
  isUpperEnd(figure) ? verb(many, "verträgt", "vertragen") : needs(many);
const they = (many: boolean) => verb(many, "das Tier", "sie");
const measures = (many: boolean) => verb(many, "misst", "messen");

/** How a figure of each kind of water is said. */
const at = {
  temperature: (figure: string) => figure,
  pH: (figure: string) => `pH ${figure}`,
  hardness: (figure: string) => `${figure} Gesamthärte`,
  salinity: (figure: string) => `${figure} Salzgehalt`,
};

const noneSuits = {
  temperature: "keine Temperatur passt",
  pH: "kein pH-Wert passt",
  hardness: "keine Härte passt",
  salinity: "kein Salzgehalt passt",
};

function sharedWater(water: keyof typeof at) {
  return (told: Told<Measures[SharedWaterRule]>) => {
    const {
      weight,
      from,
      fromMany,
      fromObject,
      to,
      toMany,
      toObject,
      oneKind,
      measures: known,
      figure,
    } = told;
    const shared = at[water](figure(known.shared));
    if (weight === "favourable")
      return `für ${oneKind ? toObject : `${fromObject} und ${toObject}`} passt: ${shared}.`;
    const [ask, other] = [asks(known.from, fromMany), asks(known.to, toMany)];
    const each = `${from} ${ask} ${at[water](figure(known.from))}, ${to} ${other === ask ? "" : `${other} `}${at[water](figure(known.to))}`;
    if (weight === "restricting") {
      return known.shared ? `${each}.` : `${each}: eine Seite muss ein wenig nachgeben.`;
    }
    if (weight === "blocking" && known.shared)
      return `${each}: gemeinsam ist nur ${shared}, und das erträgt die eine Art, ohne dabei zu gedeihen.`;
    return weight === "blocking"
      ? `${each}: ${noneSuits[water]} für beide.`
      : `${each}: ob ein gemeinsamer Wert genügt, hat niemand gesagt.`;
  };
}

function plannedWater(water: keyof typeof at) {
  return ({ weight, from, fromMany, measures: known, figure }: Told<Measures[PlannedWaterRule]>) => {
    const { kept, optimum, planned, hottest, coolest, limit } = known;
    const own = planned ?? hottest ?? coolest;
    const season = (hottest && " am heißesten Tag") ?? (coolest && " in der kühlsten Jahreszeit") ?? "";
    const plan = own ? `; geplant: ${figure(own, kept)}${season}` : "";
    if (optimum)
      return `${from} ${verb(fromMany, "gedeiht", "gedeihen")} am besten bei ${at[water](figure(optimum))}${plan}.`;
    const text = `${from} ${asks(kept, fromMany)} ${at[water](figure(kept, own))}${plan}`;
    if (weight === "advisory" && season)
      return `${text}, was vorübergehend zu ertragen ist, nicht auf Dauer.`;
    if (weight === "advisory") return `${text}, am Rand dessen, was auf Dauer zu ertragen ist.`;
    return limit
      ? `${text}; ${beyond(limit, figure, ranges)} ${verb(fromMany, "leidet oder stirbt das Tier", "leiden oder sterben sie")}.`
      : `${text}.`;
  };
}

const planned = (figure: string) => figure && `; geplant: ${figure}`;

/** A verb and what follows whom it falls on. */
type Deed = readonly [one: string, several: string, after: string];

const deeds: Readonly<Record<Words["does"], Deed>> = {
  chases: ["jagt", "jagen", ""],
  bites: ["beißt", "beißen", ""],
  kills: ["tötet", "töten", ""],
  "nips-fins": ["verletzt", "verletzen", " an den Flossen"],
  "rasps-mucus": ["verletzt", "verletzen", " an der Schleimhaut"],
  "robs-food": ["drängt", "drängen", " vom Futter ab"],
};

const occasions: Readonly<Record<Words["when"], string>> = {
  always: "",
  breeding: " in der Fortpflanzungszeit",
  "guarding-brood": " beim Bewachen von Eiern oder Jungen",
  feeding: " am Futter",
  crowded: " dort, wo kein Platz zum Ausweichen ist",
};

const sexWords: Readonly<Record<Words["sex"], readonly [one: string, several: string, adjective: string]>> = {
  male: ["Männchen", "Männchen", "männliche"],
  female: ["Weibchen", "Weibchen", "weibliche"],
};

/** Animals of one sex among those named; of one animal its name. */
const sexed = (sex: Words["sex"] | undefined, who: string, many: boolean) =>
  sex && many ? `${sexWords[sex][2]} ${who}` : who;

/** Others, and before them their own kind if it is harmed too. */
const ownToo = ({ ownToo: isOwnToo }: Pick<Told<unknown>, "ownToo">, others: string) =>
  isOwnToo ? `Artgenossen${others.includes(" und ") ? "," : " und"} ${others}` : others;

/** Whom some harm: their own kind, others, or both. */
const harmed = (told: Pick<Told<unknown>, "oneKind" | "ownToo" | "toObject">) =>
  told.oneKind ? "Artgenossen" : ownToo(told, told.toObject);

function act(whom: (told: Told<Measures[ActRule]>) => string) {
  return (told: Told<Measures[ActRule]>) => {
    const { act: deed, doer, once, when } = told.measures;
    const { from, fromMany: many, again } = told;
    const [one, several, after] = deed ? deeds[deed.value] : (["schadet", "schaden", ""] as const);
    const harms = verb(many, one, several);
    const harmed = ownToo(told, whom(told));
    const isAnyway = deed?.value === "robs-food" || (told.weight === "blocking" && when?.value === "crowded");
    const occasion = when && !isAnyway ? occasions[when.value] : "";
    const isLasting = told.weight === "blocking" && deed?.value === "chases";
    const lasting = isLasting ? ", ohne dass ein Entkommen möglich ist" : "";
    const grown = once ? ", einmal ausgewachsen," : "";
    const start = again
      ? `außerdem ${harms} ${they(many)}${grown}`
      : `${sexed(doer?.value, from, many)}${grown} ${harms}`;
    return `${start} ${harmed}${after === " vom Futter ab" ? after : `${occasion}${after}`}${lasting}.`;
  };
}

const airs: Readonly<Record<Words["airBreathing"], string>> = {
  none: "holt nie Luft",
  facultative: "holt bei Sauerstoffmangel Luft",
  obligate: "ertrinkt ohne Luft von der Oberfläche",
};

const statuses: Readonly<Record<Words["conservation"], string>> = {
  EX: "ausgestorben",
  EW: "in der Natur ausgestorben",
  CR: "vom Aussterben bedroht",
  EN: "stark gefährdet",
  VU: "gefährdet",
  NT: "potenziell gefährdet",
  LC: "nicht gefährdet",
  DD: "ungenügende Datengrundlage",
  NE: "nicht beurteilt",
};

const holders: Readonly<Record<Words["territoryHolder"], string>> = {
  male: "jedes Männchen",
  female: "jedes Weibchen",
  pair: "ein Paar",
  each: "jedes Tier",
};

/** `männliche Oskars verteidigen je`, `der Oskar verteidigt`, `Oskars verteidigen je Brutpaar`. */
function holder(of: WordOf<"territoryHolder">, who: string, many: boolean): string {
  if (!many) return `${who} verteidigt`;
  if (of?.value === "pair") return `${who} verteidigen je Brutpaar`;
  return `${of && of.value !== "each" ? `${sexWords[of.value][2]} ` : ""}${who} verteidigen je`;
}

const parts: Readonly<Record<Words["zone"], string>> = {
  surface: "nahe der Oberfläche",
  midwater: "im freien Wasser",
  bottom: "am Boden",
};

const whereabouts = (zone: WordOf<"zone">) => (zone ? parts[zone.value] : "im selben Teil des Beckens");

/** `höchstens 2 Männchen halten (Schwertträger)`, `kein Männchen halten (Schwertträger)`. */
function noMoreThan({ max, several, figure }: ToldCondition, what: string): string {
  if (max === 0) return `kein ${what} halten (${several})`;
  return `höchstens ${figure(max === undefined ? undefined : { value: max })} ${what}${what === "Tier" && max !== 1 ? "e" : ""} halten (${several})`;
}

/** What the spines of a family are like. */
const spinesOf: Readonly<Record<string, string>> = {
  Botiidae: "unter jedem Auge klappt einer aus",
  Cobitidae: "unter jedem Auge klappt einer aus",
  Loricariidae: "an Wangen und Flossen",
  Callichthyidae: "ein Stich brennt, und die Familie hat Giftdrüsen",
};

/** Catfishes whose sting hurts for hours; what else has venom is for trained hands. */
const stinging: ReadonlySet<string> = new Set(["Clariidae", "Mochokidae", "Pimelodidae"]);

const hazards: Messages["hazards"] = (hazard, of) => {
  const named = allOf(of.map(({ who }) => who));
  if (hazard === "bite")
    return `Bisse: ${named}. Hände fernhalten; eine tiefe Wunde gehört in ärztliche Behandlung.`;
  if (hazard === "shock") return `Spürbare Stromschläge: ${named}. Hände aus dem Wasser halten.`;
  if (hazard === "spines") {
    const told = of.map(({ who, family }) => {
      const like = Object.hasOwn(spinesOf, family) && spinesOf[family];
      return like ? `${who} (${like})` : who;
    });
    return `Stacheln: ${allOf(told)}. Mit einem Behälter umsetzen, nicht mit Hand oder Netz; eine Wunde, die stark schmerzt, anschwillt oder nicht heilt, gehört in ärztliche Behandlung.`;
  }
  const trained = of.every(({ family }) => stinging.has(family)) ? "" : "nur für geübte Hände, ";
  return `Gift: ${named}; ${trained}nie mit bloßen Händen anfassen. Nach einem Stich sofort ärztliche Hilfe suchen, bei Beschwerden an Atmung, Brust oder Herz den Notruf wählen.`;
};

/** How long those are that are measurably long. */
const shownLength = (length: Figure | undefined, figure: (length: Figure | undefined) => string) =>
  isMeasurable(length) ? ` (${figure(length)})` : "";

function predation(told: Told<Measures["predation"]>): string {
  const { from, fromMany, to, toObject, toMany, oneKind, weight, figure } = told;
  const { of, prey, hunter, greatestPrey, safeFrom, hunts, defence } = told.measures;
  const eats = verb(fromMany, "frisst", "fressen");
  if (of?.value === "egg")
    return `${from} ${verb(fromMany, "sucht", "suchen")} nachts Nahrung und ${verb(fromMany, "kann", "können")} die Eier fressen, die ${to} ${verb(toMany, "bewacht", "bewachen")}.`;
  if (of)
    return oneKind || from === to
      ? `${from} ${eats} ${oneKind ? "den eigenen" : "ihren"} Nachwuchs.`
      : `${from} ${eats}, was ${to} an Nachwuchs ${verb(toMany, "hat", "haben")}.`;
  if (safeFrom) {
    const safe = `; sicher erst ab ${figure(upwards(safeFrom))}`;
    if (oneKind) return `${from} ${eats} Artgenossen, solange sie klein sind${safe}.`;
    const grown = told.fromNow && " ausgewachsen";
    return `${from} ${eats}${grown} ${toObject} ${prey ? `mit ${figure(prey)} Länge` : "in kleiner Größe"}${safe}.`;
  }
  const grows =
    hunter && `ausgewachsen ${verb(fromMany, "misst der Jäger", "messen die Jäger")} ${figure(hunter)}`;
  const takes = greatestPrey ? `gefressen wird Beute bis etwa ${figure(greatestPrey)}` : grows;
  const size = prey && `${to} ${measures(toMany)} ${figure(prey)}`;
  const why = [takes, size].filter(Boolean).join(", ");
  if (oneKind && weight === "advisory")
    return `${from} ${verb(fromMany, "könnte", "könnten")} Artgenossen fressen; manche tun es.`;
  const night = hunts && !defence ? " nachts" : "";
  const spines = defence ? `; an den Stacheln der Beute kann der Jäger ersticken` : "";
  const later =
    told.fromNow &&
    `; beim Kauf mit ${told.fromNow} ${verb(fromMany, "wirkt das Tier harmlos, ausgewachsen ist es das", "wirken sie harmlos, ausgewachsen sind sie das")} nicht`;
  if (weight !== "advisory")
    return `${from} ${eats}${night} ${toObject}${why && `: ${why}`}${spines}${later}.`;
  const stated = greatestPrey ? `die größte bekannte Beute misst etwa ${figure(greatestPrey)}` : grows;
  const known = [stated, size].filter(Boolean).join(", ");
  return `${from} ${verb(fromMany, "könnte", "könnten")}${night} ${toObject} fressen; manche tun es${known && `: ${known}`}${spines}.`;
}

function footprint({ from, fromMany, weight, measures: known, figure }: Told<Measures["footprint"]>): string {
  const { length, width, needed, planned: own } = known;
  if (length)
    return `${from} ${verb(fromMany, "wird", "werden")} ${figure(length)} lang und ${verb(fromMany, "kann", "können")} in einem ${figure(width)} breiten Becken nicht wenden.`;
  const text = `${from} ${needs(fromMany)} eine Grundfläche von ${figure(needed, own)}${planned(figure(own, needed))}.`;
  if (weight === "advisory") return `${text} ${hardlyLess}`;
  return weight === "blocking" ? `Dieses Becken ist viel zu klein: ${text}` : text;
}

/** Of room that falls short by less than the figures can tell. */
const hardlyLess = "Das ist kaum weniger; mehr wäre besser.";

/** `Goldfische brauchen ein Becken von etwa 150 × 60 cm; geplant: 30 × 20 cm`. */
function room({ weight, who, many, growing, grownTo, ...told }: ToldRoom): string {
  const { neededSides, exampleSides, neededLength, neededFloor, ownSides, ownLength, ownFloor } = told;
  const needed = neededSides
    ? `ein Becken von etwa ${neededSides}`
    : neededFloor
      ? `eine Grundfläche wie ${exampleSides}`
      : `ein Becken von mindestens ${neededLength} Länge`;
  const own = planned(neededFloor ? ownSides || ownFloor : ownLength);
  if (!who) return `${needed} ${neededFloor && !neededSides ? "bieten" : "wählen"}${own}`;
  const size = grownTo ? ` (${grownTo})` : "";
  const text = growing
    ? `ausgewachsen${size} ${needs(many)} ${who} ${needed}`
    : `${who}${size} ${needs(many)} ${needed}`;
  return `${weight === "blocking" ? "Dieses Becken ist viel zu klein: " : ""}${text}${own}.`;
}

function oxygen({ from, fromMany, fromObject, measures: known, figure }: Told<Measures["oxygen"]>): string {
  const { air, need, hours, temperature, saturation, limit } = known;
  if (air)
    return `${from} ${verb(fromMany, "ertrinkt", "ertrinken")}, wenn an der Oberfläche keine Luft zu holen ist.`;
  if (hours) {
    return `bei ${figure(temperature)} enthält Wasser ${figure(saturation)} Sauerstoff; steht es still, hat dieser Besatz ihn in ${figure(hours)} bis auf ${figure(limit)} verbraucht, das Mindeste für ${fromObject}.`;
  }
  if (need?.value === "high")
    return `${from} ${needs(fromMany)} viel Sauerstoff und ${verb(fromMany, "leidet", "leiden")}, sobald das Wasser stillsteht.`;
  return `in einer heißen Nacht kann stehendes Wasser zu wenig Sauerstoff für ${fromObject} enthalten.`;
}

const plantHarm: Readonly<Record<Words["plantHarm"], readonly [one: string, several: string]>> = {
  eats: ["frisst Pflanzen", "fressen Pflanzen"],
  uproots: ["reißt Pflanzen aus", "reißen Pflanzen aus"],
  digs: ["gräbt, sodass Pflanzen sich lösen", "graben, sodass Pflanzen sich lösen"],
};

const feedingHours: Readonly<Record<Words["light"], string>> = {
  day: "am Tag",
  dusk: "in der Dämmerung",
  night: "im Dunkeln",
};

/** How food reaches an animal. */
const feedingWays: Readonly<Record<string, string>> = {
  ...places,
  ...feedingHours,
  apart: "abseits der Schnelleren",
};

/** `Frostfutter geben, wo und wann Neonsalmler fressen`, `im Dunkeln füttern (Neonsalmler)`. */
function fedWith({ of, many, words }: ToldCondition): string {
  const { given, reached } = choicesOfFood(words, foods, feedingWays);
  return [
    given.length > 0 && `${anyOf(given)} geben, wo und wann ${of} ${verb(many, "frisst", "fressen")}`,
    reached.length > 0 && `${anyOf(reached)} füttern${given.length > 0 ? "" : ` (${of})`}`,
  ]
    .filter(Boolean)
    .join(", oder ");
}

const sensitivities: Readonly<Record<Words["sensitivity"], (whom: string) => string>> = {
  copper: (whom) => `kein Kupfer, wie in Heil- und Algenmitteln, für ${whom}.`,
  salt: (whom) => `kein Salz als Heilmittel für ${whom}.`,
  "ammonia-nitrite": (whom) => `${whom} erst einsetzen, wenn der Filter eingefahren ist.`,
  handling: (whom) => `${whom} in einem Behälter mit Wasser umsetzen, nicht im Netz.`,
  "soft-water": (whom) => `kein weiches, saures Wasser für ${whom}: Gehäuse und Häutung nehmen Schaden.`,
};

const thingOf = (fact: string | undefined) =>
  fact !== undefined && Object.hasOwn(asked, fact) ? asked[fact as FactName] : "eine Bedingung";

/** `3 Männchen`; `Männchen` of a single animal. */
const numbered = (animals: number, count: number | undefined, sex: Words["sex"]) =>
  animals === count && count === 1 ? sexWords[sex][0] : `${animals} ${sexWords[sex][1]}`;

const listed = (type: "conjunction" | "disjunction") => new Intl.ListFormat("de", { type });

const allOf = (items: readonly string[]) => listed("conjunction").format(items);
const anyOf = (choices: readonly string[]) => listed("disjunction").format(choices);

const groundOf = (words: { readonly value: readonly Words["ground"][] } | undefined) =>
  anyOf((words?.value ?? []).map((word) => groundsHad[word]));

const flows: Readonly<Record<Words["flow"], string>> = {
  still: "stehend",
  gentle: "schwach",
  moderate: "mäßig",
  strong: "stark",
};

const flowOf = (word: string | boolean | undefined) =>
  typeof word === "string" && Object.hasOwn(flows, word) ? flows[word as Words["flow"]] : String(word);

/** What water does in a current between two. */
function flowing(from: string | boolean | undefined, to: string | boolean | undefined): string {
  if (to === "still") return "das Wasser stillsteht";
  if (from === "still") return `das Wasser höchstens ${flowOf(to)} strömt`;
  return `das Wasser ${[...new Set([from, to])].map(flowOf).join(" bis ")} strömt`;
}

/** What a plan may say or leave open. */
const asked: Readonly<Record<FactName, string>> = {
  "tank.longestRun": "die Beckenlänge",
  "tank.footprint": "die Grundfläche",
  "tank.height": "die Beckenhöhe",
  "tank.lid": "die Abdeckung",
  "tank.cover": "der Anteil der Deckung",
  "tank.openWater": "der Anteil freien Schwimmraums",
  "tank.openSurface": "der Anteil freier Oberfläche",
  "tank.sightBreaks": "der Sichtschutz",
  "tank.substrate": "der Bodengrund",
  "tank.hides": "die Zahl der Verstecke",
  "tank.plants": "die Bepflanzung",
  "tank.flow.calmest": "die schwächste Strömung",
  "tank.flow.strongest": "die stärkste Strömung",
  "tank.filter.ripeArea": "der Filter und seine Laufzeit",
  "water.temperature": "die Temperatur",
  "water.hottest": "die Temperatur am heißesten Tag",
  "water.coolest": "die Temperatur in der kühlsten Jahreszeit",
  "water.pH": "der pH-Wert",
  "water.generalHardness": "die Gesamthärte",
  "water.salinity": "der Salzgehalt",
  "group.count": "die Zahl der Tiere",
  "group.males": "die Zahl der Männchen",
  "group.females": "die Zahl der Weibchen",
  "group.pairs": "die Zahl der Männchen und Weibchen",
  "group.femalesPerMale": "die Zahl der Männchen und Weibchen",
  "group.length": "die Länge der Tiere",
  "group.sex": "das Geschlecht der Tiere",
  "group.form": "die Zuchtform",
  "group.grown": "ob die Tiere ausgewachsen sind",
  "group.longFins": "ob die Zuchtform lange Flossen hat",
  "group.company": "ob die Gesellschaft ruhig ist",
  "group.offerings": "was, wo und wann gefüttert wird",
};

/** The facts of a plan in a word or two, and what they are part of. */
const things: Things = {
  "tank.longestRun": ["Länge", "Becken"],
  "tank.footprint": ["Grundfläche", "Becken"],
  "tank.height": ["Höhe", "Becken"],
  "tank.lid": ["Abdeckung", "Abdeckung"],
  "tank.cover": ["Deckung", "Einrichtung"],
  "tank.openWater": ["Schwimmraum", "Einrichtung"],
  "tank.openSurface": ["freie Oberfläche", "Einrichtung"],
  "tank.sightBreaks": ["Sichtschutz", "Einrichtung"],
  "tank.substrate": ["Bodengrund", "Einrichtung"],
  "tank.hides": ["Verstecke", "Einrichtung"],
  "tank.plants": ["Pflanzen", "Einrichtung"],
  "tank.flow.calmest": ["Strömung", "Strömung"],
  "tank.flow.strongest": ["Strömung", "Strömung"],
  "tank.filter.ripeArea": ["Filter", "Filter"],
  "water.temperature": ["Temperatur", "Wasser"],
  "water.hottest": ["heißester Tag", "Wasser"],
  "water.coolest": ["kühlste Jahreszeit", "Wasser"],
  "water.pH": ["pH-Wert", "Wasser"],
  "water.generalHardness": ["Härte", "Wasser"],
  "water.salinity": ["Salzgehalt", "Wasser"],
  "group.count": ["Zahl", "Zahl"],
  "group.males": ["Geschlechter", "Zahl"],
  "group.females": ["Geschlechter", "Zahl"],
  "group.pairs": ["Geschlechter", "Zahl"],
  "group.femalesPerMale": ["Geschlechter", "Zahl"],
  "group.length": ["Größe der Tiere", "Tiere"],
  "group.sex": ["Geschlechter", "Zahl"],
  "group.form": ["Zuchtformen", "Tiere"],
  "group.grown": ["Alter", "Tiere"],
  "group.longFins": ["Flossen", "Tiere"],
  "group.company": ["ruhige Gesellschaft", "Gesellschaft"],
  "group.offerings": ["Futter", "Futter"],
};

const restsOn: Messages["basis"] = {
  ...basis,
  "common-practice": "gängige Praxis und nicht veröffentlicht",
};

const foods = {
  dry: "Trockenfutter",
  frozen: "Frostfutter",
  live: "Lebendfutter",
  plankton: "Plankton",
  "fallen-insects": "Insekten auf der Oberfläche",
  insects: "Insekten",
  crustaceans: "Krebstiere",
  worms: "Würmer",
  molluscs: "Weichtiere",
  fish: "Fisch",
  algae: "Grünfutter und Algen",
  plants: "Blätter und Gemüse",
  wood: "Holz zum Raspeln",
  detritus: "Detritus",
} satisfies Readonly<Record<Words["food"], string>>;

const hides: Readonly<Record<Words["hide"], string>> = {
  caves: "Höhlen",
  shells: "Schneckenhäuser",
  wood: "Wurzeln",
  leaves: "Laub",
  rocks: "Steinhaufen",
};

const stages: Readonly<Record<Words["stage"], string>> = {
  egg: "Ei",
  fry: "Larve",
  juvenile: "jung",
  adult: "ausgewachsen",
};

/** From which stage on. */
const since: Readonly<Record<Words["stage"], string>> = {
  egg: "schon im Ei",
  fry: "schon als Larve",
  juvenile: "schon als Jungtier",
  adult: "sobald ausgewachsen",
};

const meanings: Readonly<Record<Words["waterMeaning"], string>> = {
  kept: "Haltung",
  optimum: "Optimum",
  tolerated: "erträglich",
  limit: "Grenze",
  wild: "Natur",
  tested: "Versuch",
};

const looks: Readonly<Record<Words["look"], string>> = {
  "oval-thread-fins": "oval, mit fadenförmig ausgezogenen Flossen",
  "trailing-fins": "schleppende Flossen",
  "upright-bars": "senkrechte Binden",
  "long-stripe": "Längsstreifen",
  "neon-stripe": "Neonstreifen",
  "red-body": "roter Körper",
  "blue-body": "blauer Körper",
  "yellow-body": "gelber Körper",
  "red-and-blue-bars": "rote und blaue Binden",
  "sword-tail": "Schwert an der Schwanzflosse",
};

const lengthMeanings: Readonly<Record<Words["lengthMeaning"], string>> = {
  usual: "gewöhnlich",
  greatest: "höchstens",
};

const lengthMeasures: Readonly<Record<Words["lengthMeasure"], string>> = {
  TL: "Gesamtlänge",
  SL: "Standardlänge",
  FL: "Gabellänge",
  body: "Körperlänge",
  shell: "Gehäuse",
  disc: "Scheibe",
  unstated: "Messweise ungenannt",
};

const words: Messages["words"] = {
  airBreathing: airs,
  bodyShape: {
    "eel-like": "aalförmig",
    elongated: "langgestreckt",
    fusiform: "spindelförmig",
    "short-deep": "kurz und hoch",
  },
  conservation: statuses,
  dietType: {
    herbivore: "Pflanzenfresser",
    omnivore: "Allesfresser",
    carnivore: "Fleischfresser",
    detritivore: "Detritusfresser",
  },
  does: {
    chases: "jagt",
    bites: "beißt",
    kills: "tötet",
    "nips-fins": "zupft an Flossen",
    "rasps-mucus": "raspelt Schleimhaut ab",
    "robs-food": "drängt vom Futter ab",
  },
  endpoint: {
    balance: "Gleichgewichtsverlust",
    "half-dead": "halbe Sterblichkeit",
    death: "Tod",
    survival: "Überleben",
    growth: "Wachstum",
    breeding: "Fortpflanzung",
    choice: "Wahl",
    performance: "Leistung",
    housing: "Haltung",
    mixed: "gemischt",
    unstated: "ungenannt",
  },
  flow: flows,
  food: foods,
  ground: grounds,
  hazard: { venom: "Gift", spines: "Stacheln", bite: "Biss", shock: "Stromschlag" },
  hide: hides,
  jumps: { seldom: "selten", startled: "bei Schreck", readily: "leicht" },
  kind: {
    fish: "Fisch",
    shrimp: "Garnele",
    crayfish: "Krebs",
    crab: "Krabbe",
    snail: "Schnecke",
    mussel: "Muschel",
    frog: "Frosch",
  },
  lengthMeaning: lengthMeanings,
  lengthMeasure: lengthMeasures,
  light: feedingHours,
  living: {
    alone: "einzeln",
    pair: "paarweise",
    harem: "Harem",
    group: "Gruppe",
    shoal: "Schwarm",
    either: "einzeln oder mit Artgenossen",
  },
  look: looks,
  oxygenNeed: { low: "gering", ordinary: "gewöhnlich", high: "hoch" },
  pace: { slow: "langsam", ordinary: "gewöhnlich", fast: "schnell" },
  prey,
  reproduction: {
    "scatters-eggs": "Freilaicher",
    "guards-eggs": "bewacht den Laich",
    "bubble-nest": "baut ein Schaumnest",
    mouthbrooder: "Maulbrüter",
    livebearer: "lebendgebärend",
    "large-young": "wenige große Junge",
    "broods-young": "trägt die Eier; es schlüpfen fertige Junge",
    "sea-larvae": "die Larven brauchen Brack- oder Meerwasser",
  },
  sensitivity: {
    copper: "Kupfer",
    salt: "Salz",
    "ammonia-nitrite": "Ammoniak und Nitrit",
    handling: "Herausfangen",
    "soft-water": "weiches Wasser",
  },
  sex: { male: "Männchen", female: "Weibchen" },
  stage: stages,
  supply: { farmed: "Nachzucht", mixed: "beides", wild: "Wildfang" },
  target: targets,
  territoryHolder: holders,
  waterMeaning: meanings,
  waters: { fresh: "Süßwasser", brackish: "Brackwasser", marine: "Meerwasser" },
  when: {
    always: "immer",
    breeding: "in der Fortpflanzungszeit",
    "guarding-brood": "beim Bewachen der Brut",
    feeding: "am Futter",
    crowded: "bei Enge",
  },
  zone: { surface: "Oberfläche", midwater: "freies Wasser", bottom: "Boden" },
  basis,
  plantHarm: { eats: "frisst", uproots: "reißt aus", digs: "gräbt" },
};

const traits: Messages["traits"] = {
  "origin.regions": "Verbreitung",
  "origin.waters": "Gewässer",
  "origin.supply": "Nachzucht oder Wildfang",
  "origin.conservation": "Gefährdung",
  "size.adultLength": "Endgröße",
  "size.standardShare": "Anteil der Standardlänge",
  "size.bodyShape": "Körperform",
  "size.bodyDepthShare": "Körperhöhe",
  "size.lengthWeight": "Länge und Gewicht",
  "size.grownAt": "Alter bei Endgröße",
  "size.lifespan": "Lebenserwartung",
  "water.temperature": "Temperatur",
  "water.pH": "pH-Wert",
  "water.generalHardness": "Gesamthärte",
  "water.carbonateHardness": "Karbonathärte",
  "water.coolSeason": "kühle Jahreszeit",
  "water.salinity": "Salzgehalt",
  "water.flow": "Strömung",
  "water.oxygenNeed": "Sauerstoffbedarf",
  "water.airBreathing": "Luftatmung",
  "space.baseLength": "Beckenlänge",
  "space.footprint": "Grundfläche",
  "space.furtherFootprint": "Grundfläche je weiteres Tier",
  "space.height": "Beckenhöhe",
  "space.zones": "Aufenthalt",
  "space.cover": "Deckung",
  "space.openWater": "freier Schwimmraum",
  "space.grownInPlants": "eingewachsene Pflanzen",
  "space.substrate": "Ansprüche an den Boden",
  "space.hides": "Verstecke",
  "space.jumps": "Springen",
  "space.territory": "Revierbildung",
  "temperament.acts": "Übergriffe",
  "temperament.shy": "Scheu",
  "temperament.varies": "Unterschiede zwischen Tieren",
  "social.living": "Lebensweise",
  "social.group": "Gruppengröße",
  "social.largestGroup": "größte Gruppe",
  "social.femalesPerMale": "Weibchen je Männchen",
  "social.settledBy": "beruhigt durch Gesellschaft",
  "social.settles": "beruhigt andere",
  "appearance.looks": "Zeichnung",
  "appearance.longFins": "lange Flossen",
  "diet.type": "Ernährung",
  "diet.foods": "Futter",
  "diet.reach": "Futterplatz",
  "diet.pace": "Tempo am Futter",
  "diet.light": "Futterzeit",
  "predation.eats": "Beute unter Mitbewohnern",
  "reproduction.mode": "Fortpflanzung",
  "reproduction.breedsFrom": "Alter bei Geschlechtsreife",
  "reproduction.interbreedsWith": "kreuzt sich mit",
  "effects.digs": "Graben",
  "effects.uproots": "Ausreißen von Pflanzen",
  "effects.eatsPlants": "Fressen von Pflanzen",
  "care.sensitive": "Empfindlichkeiten",
  "care.hazards": "Gefahren für Menschen",
  "care.rehoming": "Abgabe",
};

const waters = ({ temperature, pH, hardness, salinity }: Omit<ToldWater, "kinds" | "current">) =>
  [
    temperature,
    pH && `pH ${pH}`,
    hardness && `${hardness} Gesamthärte${salinity && " vor dem Salz"}`,
    salinity && `${salinity} Salzgehalt`,
  ].filter(Boolean);

/** How a share of the tank is seen, which is said once in a sentence. */
const seenFromAbove = " (von oben gesehen)";

const lawsSomewhere = (whom: string, entries: number) =>
  `Recht: ${entries} ${entries === 1 ? "Eintrag aus dem Recht eines Ortes betrifft" : "Einträge aus dem Recht mehrerer Orte betreffen"} ${whom}. Den Standort des Beckens angeben, um zu lesen, was davon gilt; maßgeblich ist der geltende Wortlaut.`;

/** The report in German. */
export const german: Messages = /* @__PURE__ */ frozen(/* @__PURE__ */ messages());

function messages(): Messages {
  return {
    language: "de",
    several: severalOf,
    theOthers: "alle anderen",
    this: singleOf,
    headline: (told) => {
      const { outcome, clash, otherWater, individuals } = told;
      const { oneSpecies, oneGroup, animals, warned, amiss } = told;
      const together = warned ? "können zusammen leben" : "passen gut zusammen";
      if (clash) return `Ungeeignet: entweder ${clash[0]} oder ${clash[1]} halten, nicht beide.`;
      if (otherWater) return `Nicht in diesem Wasser: ${otherWater}.`;
      if (individuals)
        return `Niemand kann es sagen: es kommt auf die einzelnen Tiere an (${individuals}). Nur versuchen, wenn ein anderer Platz bereitsteht.`;
      if (told.tooSmall) return "Ungeeignet: das Becken ist viel zu klein.";
      return {
        suitable: oneGroup
          ? `Geeignet: ${warned ? "ein brauchbarer" : "ein guter"} Plan für ${animals}.`
          : `Geeignet: ${animals} ${oneSpecies ? "kommen miteinander aus" : together}.`,
        conditional: "Bedingt geeignet: es geht, sobald das Folgende stimmt.",
        unsuitable:
          oneSpecies || amiss
            ? `Ungeeignet: ${oneSpecies ? "" : `${amiss} `}so nicht halten.`
            : "Ungeeignet: nicht zusammen halten.",
        undetermined: "Unentschieden: etwas Entscheidendes ist nicht bekannt.",
      }[outcome];
    },
    bounds: (atBest, atWorst, outcome, why) => {
      const told = {
        suitable: "spricht nichts dagegen",
        conditional: "muss sich etwas ändern",
        unsuitable: "ist es ungeeignet",
      };
      const best = atBest !== outcome && `im besten Fall ${told[atBest as keyof typeof told]}`;
      const worst = atWorst !== outcome && `im schlechtesten Fall ${told[atWorst as keyof typeof told]}`;
      const doubts = {
        individual: "einzelne Tiere sind sehr verschieden",
        disputed: "die Quellen widersprechen sich",
        missing: "nicht alles ist bekannt",
      };
      const reason = worst && why.length > 0 && `: ${allOf(why.map((doubt) => doubts[doubt]))}`;
      return `${capital([best, worst].filter(Boolean).join(", "))}${reason || ""}.`;
    },
    lawFirst: (whom) =>
      `Am Standort des Beckens betrifft das Recht ${whom}: vor Kauf oder Weitergabe lesen, was unten dazu steht.`,
    measureFirst: (first) =>
      `Zuerst messen oder festlegen: ${allOf([...new Set(first.map((fact) => things[fact][0]))])}.`,
    titles: {
      parties: "Tiere",
      blocking: "Warum nicht",
      restricting: "Was sich ändern muss",
      besides: "Was sich außerdem ändern müsste",
      unsaid: "Noch nicht im Plan: dafür sorgen",
      deciding: "Was niemand sagen kann",
      advisory: "Wissenswert",
      favourable: "Dafür spricht",
      watchFor: "Achten auf",
      meanwhile: "Bis dahin achten auf",
      everyTank: "In jedem Becken",
      remedy: "Was helfen würde",
      remedies: "Was helfen würde: eines davon",
      ifItStarts: "Bei Streit",
      cautions: "Vorsicht",
    },
    party: ({ name, several, scientific, count, males = 0, females = 0, sex, stage, temper, length }) => {
      const known = males + females;
      const rest = (count ?? 0) - known;
      const sexes = [
        males > 0 && numbered(males, count, "male"),
        females > 0 && numbered(females, count, "female"),
        known > 0 && rest > 0 && `${rest} nicht bestimmt`,
      ].filter(Boolean);
      const size = length && `${length} lang${stage === "juvenile" ? " beim Kauf" : ""}`;
      const nature =
        temper &&
        {
          shyer: "scheu",
          bolder: "forsch",
          bully: count === 1 ? "ein Raufbold" : "Raufbolde darunter",
        }[temper];
      const detail = [
        sexes.length > 0 ? sexes.join(" und ") : sex && sexWords[sex][0],
        stage && stages[stage],
        size,
        nature,
      ]
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
      season: ({ from, fromMany, toObject, measures: known, figure }) =>
        `${from} ${needs(fromMany)} in der kühlsten Jahreszeit ${figure(known.season)}, um zu gedeihen: zu kalt für ${toObject}${known.to ? ` (${figure(known.to)})` : ""}.`,
      flow: ({ weight, from, fromObject, to, toObject, oneKind }) => {
        if (weight !== "favourable")
          return `${from} und ${to} brauchen verschiedene Strömungen, jede an ihrem Platz.`;
        return oneKind
          ? `eine Strömung passt für ${toObject}.`
          : `eine Strömung passt für ${fromObject} und ${toObject}.`;
      },
      predation: (told) => predation(told),
      "acts-own-kind": (told) => {
        const { inDoubt, from, fromMany, measures } = told;
        if (!inDoubt) return act(() => "Artgenossen")(told);
        return `${sexed(measures.doer?.value, from, fromMany)} ${verb(fromMany, "verträgt", "vertragen")} vielleicht keine Artgenossen, wie viel Platz auch da ist.`;
      },
      "acts-look-alike": act(({ toObject }) => `${toObject} wegen der Ähnlichkeit mit Artgenossen`),
      "acts-others": act(({ toObject }) => toObject),
      "fin-nipping": (told) => {
        const { weight, from, fromMany, measures: known } = told;
        const whom = harmed(told);
        if (known.hunts)
          return `${from} ${verb(fromMany, "könnte", "könnten")} ${whom} nachts im Schlaf an den Flossen verletzen.`;
        if (known.feeds)
          return `${from} ${verb(fromMany, "frisst", "fressen")} auch ${whereabouts(known.feeds)} und ${verb(fromMany, "könnte", "könnten")} ${whom} dabei an den Flossen verletzen.`;
        const bites = verb(fromMany, "verletzt", "verletzen");
        if (weight === "blocking")
          return `${from} ${bites} ${whom} an den Flossen: Gesellschaft wählen, die nicht an Flossen zupft.`;
        return `${from} ${bites} ${whom}${weight === "advisory" ? " hin und wieder" : ""} an den Flossen.`;
      },
      "mucus-grazing": (told) => {
        const { weight, from, fromMany, measures: known } = told;
        const whom = harmed(told);
        if (known.fed)
          return `${from} ${verb(fromMany, "könnte", "könnten")} ${whom} auch gut gefüttert an der Schleimhaut der Flanken verletzen.`;
        const text = `${from} ${verb(fromMany, "verletzt", "verletzen")} ${whom} an der Schleimhaut der Flanken`;
        return weight === "advisory" ? `${text}, wenn zu wenig abzuweiden ist.` : `${text}.`;
      },
      "territory-contest": ({ from, to, measures: { zone } }) =>
        `${from} und ${to} verteidigen beide einen Platz ${whereabouts(zone)}.`,
      "size-and-pace": ({ from, fromMany, toObject, measures: { longer, shorter }, figure }) =>
        `${from} (${figure(longer)}) ${verb(fromMany, "lässt", "lassen")} ${toObject}${shownLength(shorter, figure)} nicht zur Ruhe kommen.`,
      "feeding-competition": ({ from, fromMany, to, toMany }) =>
        `${from} ${verb(fromMany, "hat", "haben")} alles gefressen, bevor ${to} ans Futter ${verb(toMany, "kommt", "kommen")}.`,
      shyness: ({ fromObject, to, toMany }) =>
        `${to} ${verb(toMany, "treibt", "treiben")} ${fromObject} durch Unruhe ins Versteck.`,
      interbreeding: ({ weight, from, to }) =>
        weight === "advisory"
          ? `${from} und ${to} kreuzen sich: keine Jungen weitergeben oder nur eine der beiden Arten halten.`
          : `${from} und ${to} kreuzen sich, und die Jungen sind Hybriden: nur eine der beiden Arten halten.`,
      furnishing: ({ weight, from, fromMany, to, measures: known, figure }) => {
        const { cover, openWater, harm } = known;
        if (harm)
          return `eine der beiden Arten (${from}, ${to}) ${plantHarm[harm.value][0]}, und die andere kommt ohne Pflanzen nicht aus${weight === "advisory" ? ": robuste Farne und Moos pflanzen" : ""}.`;
        if (cover)
          return `${from} und ${to} verlangen zusammen ${figure(cover)} des Beckens als Deckung, von oben gesehen, und ${figure(openWater)} als freien Schwimmraum: beides zugleich hat kein Becken.`;
        return `${from} ${needs(fromMany)} als Boden ${groundOf(known.from)}, ${to} ${groundOf(known.to)}.`;
      },
      "conditions-exclude": ({ from, to, measures: { one, other } }) => {
        const who = allOf([...new Set([from, to].filter(Boolean))]);
        const wanted = [...new Set([thingOf(one?.value), thingOf(other?.value)])];
        return `kein Becken erfüllt zugleich alles, was verlangt wird${who && ` (${who})`}: ${allOf(wanted)}.`;
      },
      "water-temperature": plannedWater("temperature"),
      "water-ph": plannedWater("pH"),
      "water-hardness": plannedWater("hardness"),
      "water-salinity": plannedWater("salinity"),
      oxygen: (told) => oxygen(told),
      "filter-nitrogen": () =>
        "der Filter muss das Ammonium abbauen, das der ausgewachsene, reichlich gefütterte Besatz abgibt.",
      height: ({ weight, from, fromMany, measures: known, figure }) => {
        const own = planned(figure(known.planned, known.needed));
        return weight === "advisory"
          ? `${from} ${verb(fromMany, "gedeiht", "gedeihen")} besser in einem ${figure(known.needed, known.planned)} hohen Becken${own}.`
          : `${from} ${needs(fromMany)} ein ${figure(known.needed, known.planned)} hohes Becken${own}.`;
      },
      zones: ({ weight, from, fromMany, measures: known, figure }) => {
        if (weight === "restricting")
          return `${from} ${verb(fromMany, "lebt", "leben")} ${whereabouts(known.zone)}, und dort summiert sich der Bedarf aller.`;
        const text = `${from} ${verb(fromMany, "lebt", "leben")} ${whereabouts(known.zone)}, und alle, die dort leben, brauchen zusammen eine Grundfläche von ${figure(known.needed, known.planned)}${planned(figure(known.planned, known.needed))}.`;
        if (weight === "advisory") return `${text} ${hardlyLess}`;
        return weight === "blocking" ? `Dieses Becken ist viel zu klein: ${text}` : text;
      },
      territories: ({ from, fromMany, measures: { holder: of, area, zone }, figure }) =>
        `${holder(of, from, fromMany)} einen Platz von etwa ${figure(square(area))} ${whereabouts(zone)}, außer Sicht von Rivalen.`,
      "open-water": ({ from, fromMany, measures: { needed }, figure }) =>
        `${from} ${needs(fromMany)} ${figure(needed)} des Beckens, von oben gesehen, als freien Schwimmraum.`,
      ground: ({ from, fromMany, measures: { needed } }) =>
        `${from} ${needs(fromMany)} als Boden ${groundOf(needed)}.`,
      "hiding-places": ({ from, fromMany, measures: { kinds, needed, own }, figure }) =>
        `${from} ${verb(fromMany, "versteckt", "verstecken")} sich; als Versteck dienen ${anyOf((kinds?.value ?? []).map((kind) => hides[kind]))}: mindestens ${figure(needed)} bieten${own ? ", für alle Arten zusammen" : ""}.`,
      sensitive: ({ fromObject, fromMany, again, measures: { to } }) =>
        sensitivities[to?.value ?? "handling"](again ? they(fromMany) : fromObject),
      "plants-at-risk": ({ from, fromMany, measures: { harm } }) =>
        `${from} ${verb(fromMany, ...plantHarm[harm?.value ?? "eats"])}.`,
      feeding: ({ from, fromMany, measures: known }) => {
        const at = known.places?.value.map((place) => places[place]) ?? [];
        const hours = known.hours?.value.map((hour) => feedingHours[hour]) ?? [];
        return `${from} ${verb(fromMany, "frisst", "fressen")} ${allOf(at)}, ${allOf(hours)}: was andere bekommen, kommt dort vielleicht nicht an.`;
      },
      "longest-run": ({ from, fromMany, weight, measures: known, figure }) => {
        const text = `${from} ${needs(fromMany)} ein ${figure(known.needed, known.planned)} langes Becken${planned(figure(known.planned, known.needed))}.`;
        if (weight === "advisory") return `${text} ${hardlyLess}`;
        return weight === "blocking" ? `Dieses Becken ist viel zu kurz: ${text}` : text;
      },
      footprint: (told) => footprint(told),
      "carbon-dioxide": ({ measures: { pH, hardness, dissolved, limit }, figure }) =>
        `Bei pH ${figure(pH)} und ${figure(hardness)} Karbonathärte enthielte dieses Wasser rund ${figure(dissolved)} Kohlendioxid; ab ${figure(limit)} können Fische nach Luft schnappen: die Oberfläche bewegen und beides neu messen, denn andere Säuren, etwa aus Torf, täuschen.`,
      "cool-season": ({ from, fromMany, measures: known, figure }) =>
        `${from} ${needs(fromMany)} in der kühlsten Jahreszeit ${figure(known.season)}, um zu gedeihen.`,
      "group-size": ({ from, fromMany, weight, measures: known, figure }) => {
        const { max } = known.needed as Figure;
        if (weight === "advisory")
          return `${from} leben ${max === 1 ? "einzeln" : `zu höchstens ${max}`}; geplant: ${figure(known.planned)}.`;
        if (known.fewer)
          return `${from}: ${figure(known.planned)} sind eine ungünstige Zahl; ${figure(known.needed)} halten oder ${figure(known.fewer) === "1" ? "ein einziges Tier" : `höchstens ${figure(known.fewer)}`}.`;
        return `${from} ${needs(fromMany)} Gesellschaft der eigenen Art: ${figure(known.needed)} halten; geplant: ${figure(known.planned)}.`;
      },
      "sex-ratio": ({ weight, from, measures: known, figure }) => {
        const text = `mindestens ${figure(known.needed)} Weibchen je Männchen halten (${from})`;
        return weight === "advisory"
          ? `${text}, sobald die Geschlechter zu erkennen sind.`
          : `${text}, sonst bedrängen die Männchen sie bis zur Erschöpfung.`;
      },
      cover: ({ from, fromMany, measures: { needed }, figure }) =>
        `${from} ${needs(fromMany)} Deckung über ${figure(needed)} des Beckens, von oben gesehen.`,
      plants: ({ from, fromMany }) =>
        `${from} ${verb(fromMany, "gedeiht", "gedeihen")} nur zwischen eingewachsenen Pflanzen.`,
      "settling-company": ({ from, fromMany, weight, measures: { cover }, figure }) =>
        weight === "advisory"
          ? `${from} ${verb(fromMany, "beruhigt", "beruhigen")} sich bei Deckung über ${figure(cover)} des Beckens, von oben gesehen, langsamer als neben ruhigen Fischen im freien Wasser.`
          : `${from} ${verb(fromMany, "ist scheu und kommt", "sind scheu und kommen")} neben ruhigen Fischen hervor; Deckung über ${figure(cover)} des Beckens, von oben gesehen, beruhigt ebenfalls, nur langsamer.`,
      lid: ({ from, fromMany, weight }) =>
        weight === "restricting"
          ? `${from} ${verb(fromMany, "verlässt", "verlassen")} ein offenes Becken: lückenlos abdecken.`
          : `${from} ${verb(fromMany, "kann", "können")} bei Schreck springen: eine Abdeckung ist sicherer.`,
      "flow-places": ({ from, fromMany, measures: { calmest, strongest } }) =>
        `${from} ${needs(fromMany)} einen Platz, an dem ${flowing(calmest?.value ?? strongest?.value, strongest?.value ?? calmest?.value)}.`,
      "caution-floor": ({ measures: { total }, figure }) =>
        total
          ? `Gewicht: etwa ${figure(total)} mit Glas, Kies und Unterschrank. ${isVeryHeavy(total) ? "Vor dem Aufstellen einen Statiker fragen, auf jeder Decke." : "Quer zu den Deckenbalken an eine tragende Wand stellen; bei alten oder hölzernen Decken und im Zweifel einen Statiker fragen."}`
          : `Gewicht: je ${figure({ value: 100, unit: "L" })} etwa ${figure({ value: 125, unit: "kg" })} mit Glas und Unterschrank; bei alten oder hölzernen Decken einen Statiker fragen.`,
      "caution-electricity": () =>
        "Strom: Fehlerstromschutzschalter, Kabel mit Tropfschlaufe unterhalb der Steckdose, Stecker ziehen, bevor eine Hand ins Wasser geht; Installationen gehören in die Hand einer Elektrofachkraft.",
      "caution-hazards": ({ from, fromMany, measures: { hazard, family } }) =>
        hazards(hazard?.value ?? "bite", [{ who: from, many: fromMany, family: family?.value ?? "" }]),
      "caution-zoonoses": () =>
        "Keime: Hände waschen, mit offenen Wunden nicht ins Wasser greifen, bei einer Wunde, die nicht heilt, in der Arztpraxis das Aquarium erwähnen; bei geschwächter Abwehr die Arbeit anderen überlassen.",
      "caution-devices": ({ from, fromMany, measures: { device } }) =>
        device?.value === "heater"
          ? `${from} ${verb(fromMany, "verbrennt", "verbrennen")} sich an einem ungeschützten Heizer: ein Schutzgitter verwenden oder außerhalb des Beckens heizen.`
          : `${from} ${verb(fromMany, "gerät", "geraten")} in den Ansaugkorb von Pumpen: mit Schaumstoff abdecken.`,
      "caution-law": ({
        fromObject,
        measures: { jurisdiction, effect, instrument, date, basis: of, laws },
      }) =>
        laws
          ? lawsSomewhere(fromObject, (laws as Figure).value ?? 1)
          : `Recht, betrifft ${fromObject}, ${jurisdictionIn(jurisdiction?.value)}: ${effectIn(effect?.value)} (${instrument?.value}; ${date?.value === "undated" ? "ohne Datum" : date?.value}${of?.value === "memory" ? "; aus dem Gedächtnis, nicht gelesen" : ""}.) Maßgeblich ist der geltende Wortlaut.`,
      "caution-release": () =>
        "Tiere, Pflanzen oder Beckenwasser nie in die Natur bringen: Tiere weitervermitteln oder tierärztlichen Rat holen.",
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
      const whom = kinds === 1 ? "diese Art" : kinds === 2 ? "beide" : "alle";
      return water.length === 0
        ? `eine Strömung passt für ${whom}.`
        : `Wasser mit ${water.join(", ")} passt für ${whom}.`;
    },
    waterToHave: (told) => `Wasser: ${waters(told).join(", ")}; das vorhandene zuerst messen.`,
    hazards,
    lawsSomewhere,
    remedy: {
      rehome: ({ one, several, moved, all, apart, lawful, who, stay = [] }) => {
        const kinds = {
          males: ["Männchen", "Männchen"],
          females: ["Weibchen", "Weibchen"],
          juveniles: ["Jungtier", "Jungtiere"],
        } as const;
        const [single, many] = who ? kinds[who] : ["Tier", "Tiere"];
        const those = moved === 1 ? `ein ${single} (${one})` : `${moved} ${many} (${several})`;
        const kept = stay.map(({ who: sort, count }) => `${count} ${kinds[sort][count === 1 ? 0 : 1]}`);
        const rest = kept.length > 0 ? allOf(kept) : "den Rest";
        const there = apart && moved > 1 ? "je ein eigenes" : "ein anderes";
        return `${those} in ${there} Becken umsetzen oder abgeben${lawful ? ", soweit das Recht es erlaubt" : ""}${all ? "" : `, ${rest} behalten`}`;
      },
      form: ({ several, form }) => `diese Zuchtform wählen (${several}): ${form}`,
      add: ({ name, several: many, count }) =>
        `${count} ${count === 1 ? name : many} als ruhige Gesellschaft dazusetzen`,
      water: (told) => `Wasser mit ${waters(told).join(", ")} bereitstellen`,
      tank: (sides, height) => `ein Becken von ${sides}${height ? ` und ${height} Höhe` : ""} wählen`,
      all: (clauses, outcome) =>
        `${clauses.join("; ")}.${outcome === "conditional" ? " Einige Bedingungen bleiben." : ""}`,
      none: (obstacle) => `Mit drei Schritten ist nicht zu helfen. Im Weg steht: ${obstacle}`,
    },
    ifItStarts:
      "Sichtachsen unterbrechen; den Angreifer herausnehmen, nicht das Opfer, ihn als Letzten in ein umgestaltetes Becken zurücksetzen und für alle Fälle einen anderen Platz haben.",
    otherRule: (id, { from, to }) =>
      [id, [from, to].filter(Boolean).join(" und ")].filter(Boolean).join(": "),
    signs: {
      "torn-fins": "zerrissene Flossen",
      "damaged-skin": "wunde Flanken",
      hiding: "ständiges Verstecken",
      "missing-animals": "fehlende Tiere",
      thin: "abgemagerte Tiere",
      chasing: "Jagen ohne Ende",
      gasping: "Luftschnappen an der Oberfläche",
      "missing-young": "fehlende Eier oder Junge",
    },
    lookFor: (signs, whom) => `${allOf(signs)}${whom && ` (${whom})`}`,
    conditions: {
      "tank.longestRun": ({ wanted }) => `ein Becken mit ${wanted} Länge wählen`,
      "tank.footprint": ({ wanted }) => `eine Grundfläche von ${wanted} bieten`,
      "tank.height": ({ wanted }) => `ein Becken mit ${wanted} Höhe wählen`,
      "tank.openWater": ({ wanted }) => `${wanted} des Beckens${seenFromAbove} zum Schwimmen frei lassen`,
      "tank.substrate": ({ words }) =>
        `als Boden ${anyOf(words.map((word) => groundsHad[word as Words["ground"]] ?? String(word)))} wählen`,
      "tank.hides": ({ of, wanted, min }) =>
        `${min === 1 ? "einen Platz" : `${wanted} Plätze`} zum Verstecken, Schlafen oder Laichen bieten (${of})`,
      "tank.openSurface": ({ wanted }) =>
        `${wanted} der Oberfläche von Blättern frei halten, mit Luft zwischen Wasser und Abdeckung`,
      "tank.sightBreaks": ({ wanted, min }) =>
        `die Sicht über den Boden mit Wurzeln, Steinen oder Dickicht an ${wanted} ${min === 1 ? "Stelle" : "Stellen"} unterbrechen`,
      // Eight weeks: the end of ripening in `filterCapacity`. The foam: media tables, from memory (see `PlannedFilter`).
      "tank.filter.ripeArea": ({ min = 0, figure }) =>
        `einen seit acht Wochen laufenden, eingefahrenen Filter mit etwa ${figure({ value: Math.max(1, Math.round(min)), unit: "L" })} grobem Schaumstoff betreiben`,
      "tank.lid": () => "das Becken lückenlos abdecken",
      "tank.cover": ({ wanted }) =>
        `${wanted} des Beckens${seenFromAbove} mit Pflanzen, Wurzeln oder Steinen als Deckung einrichten`,
      "tank.plants": ({ words }) =>
        words.includes("none")
          ? "nur Pflanzen halten, um die es nicht schade ist"
          : "die Pflanzen zuerst einwachsen lassen",
      "tank.flow.calmest": ({ words }) =>
        `einen ruhigen Platz bieten, an dem ${flowing("still", words.at(-1))}`,
      "tank.flow.strongest": ({ words }) =>
        `das Wasser irgendwo mindestens ${flowOf(words[0])} strömen lassen`,
      "water.temperature": ({ wanted }) => `das Wasser bei ${wanted} halten`,
      "water.hottest": ({ wanted }) => `das Wasser am heißesten Tag bei ${wanted} halten`,
      "water.coolest": ({ wanted }) => `das Wasser in der kühlsten Jahreszeit bei ${wanted} halten`,
      "water.pH": ({ wanted }) => `das Wasser bei pH ${wanted} halten`,
      "water.generalHardness": ({ wanted }) => `das Wasser bei ${wanted} Gesamthärte halten`,
      "water.salinity": ({ wanted }) =>
        `das Wasser bei ${wanted} Salzgehalt halten (Gramm Meersalz je Kilogramm Wasser)`,
      "group.count": (told) =>
        told.max === undefined
          ? `${told.wanted} ${told.min === 1 ? `Tier halten (${told.several})` : `${told.several} halten`}`
          : noMoreThan(told, "Tier"),
      "group.males": (told) => noMoreThan(told, "Männchen"),
      "group.females": (told) => noMoreThan(told, "Weibchen"),
      "group.pairs": ({ several }) =>
        `nur Tiere eines Geschlechts halten (${several}), damit keine Brut entsteht`,
      "group.femalesPerMale": ({ several, wanted }) => `${wanted} Weibchen je Männchen halten (${several})`,
      "group.length": ({ several, min, max, figure }) =>
        max === undefined
          ? `${several} mit ${figure({ min: halfUp(min ?? 0), unit: "cm" })} Länge kaufen`
          : `${several} wählen, die nicht über ${figure({ value: max, unit: "cm" })} hinauswachsen`,
      "group.longFins": ({ several }) => `eine Zuchtform mit kurzen Flossen wählen (${several})`,
      "group.sex": ({ several, words }) =>
        `nur ${words.map((sex) => (sex === "male" ? sexWords.male[1] : sexWords.female[1])).join(" oder ")} halten (${several})`,
      "group.form": ({ several, words }) =>
        `diese Zuchtform wählen (${several}): ${anyOf(words.map((word) => spaced(String(word))))}`,
      "group.grown": ({ several }) => `nur junge ${several} halten und vor dem Auswachsen abgeben`,
      "group.offerings": (told) => fedWith(told),
      "group.company": ({ several }) =>
        `ruhige Fische im freien Wasser halten, die ${several} weder fressen noch von ihnen gefressen werden`,
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
    supported: (reason, of) => stopped(reason, ` (${{ ...basis, derived: "erschlossen" }[of]}).`),
    unlessMarked: (of, marks) =>
      `Wo nichts anderes steht, ist dies ${restsOn[of]}${marks.has("derived") ? "; erschlossen heißt: aus dem Nächstbekannten hergeleitet" : ""}.`,
    traits,
    open: {
      missing: (missing, of) => `${of}, ${allOf(missing)}`,
      disputed: (trait, of, values, own) => {
        const said = values.map((value) => value.replaceAll("; ", ", "));
        const others = said.some((value) => /, | aber /.test(value)) ? ", oder " : " oder ";
        const yours = own && ` (geplant: ${own})`;
        return `${of}, ${[trait, said.join(others)].filter(Boolean).join(" ")}${yours}`;
      },
      notGiven: (inputs, of) =>
        `${allOf([...new Set(inputs.map((input) => asked[input]))])}${of && ` (${of})`}`,
      outsideDomain: (of) => of || "das Becken",
      individual: (of) => of,
      all: (reason, questions, weight, further) => {
        const more = further > 0 ? `; und ${further} weitere` : "";
        const named = reason === "individual" ? allOf(questions) : questions.join("; ");
        const bad = weight === "blocking";
        const said = {
          missing: `nicht bekannt${bad ? ", und es könnte den Plan ausschließen" : ""}: ${named}`,
          disputed: `die Quellen widersprechen sich${bad ? ", und es könnte den Plan ausschließen" : ""}: ${named}`,
          "not-given": `im Plan fehlt: ${named}`,
          "outside-domain": `außerhalb des Bereichs, in dem die Gleichung gilt: ${named}`,
          individual: `von Tier zu Tier sehr verschieden${bad ? ", und ein Raufbold könnte den Plan ausschließen" : ""}: ${named}`,
        }[reason];
        return `${said}${more}.`;
      },
    },
    alreadyRight: (right, wrong) => `richtig geplant: ${allOf(rightThings(things, right, wrong))}.`,
    closing:
      "Ratschläge für typische Tiere; einzelne sind verschieden: beobachten und ein zweites Becken bereithalten.",
    withoutCautions:
      "Ob Tiere Menschen verletzen können und was das Gesetz zu ihnen sagt, steht nur im Bericht zu einem Plan: vor dem Kauf nachlesen.",
    keptDown: (wounds) => `Platz und Deckung wie geplant sollten das in Grenzen halten: ${wounds}`,
    beforeUnit: "\u202f",
    ranges,
    units: {
      "%": "%",
      cm: "cm",
      cm2: "cm²",
      m2: "m²",
      L: "l",
      kg: "kg",
      in: "Zoll",
      in2: "Quadratzoll",
      ft2: "Quadratfuß",
      lb: "lb",
      "gal-us": "US-Gallonen",
      "gal-imp": "imp. Gallonen",
      degC: "°C",
      degF: "°F",
      dH: "°dH",
      "mg/L-CaCO3": "ppm",
      "g/kg": "g/kg",
      "mg/L": "mg/l",
      h: "Stunden",
      d: "Tage",
      mo: "Monate",
      a: "Jahre",
    },
    unitsOfOne: { h: "Stunde", d: "Tag", mo: "Monat", a: "Jahr" },
    words,
    profile: {
      columns: ["Merkmal", "Wert", "auch angegeben", "Beleg"],
      sections: {
        origin: "Herkunft",
        size: "Größe",
        water: "Wasser",
        space: "Raum",
        temperament: "Wesen",
        social: "Zusammenleben",
        appearance: "Aussehen",
        diet: "Ernährung",
        predation: "Beute",
        reproduction: "Fortpflanzung",
        effects: "Wirkung auf das Becken",
        care: "Pflege",
      },
      yes: "ja",
      no: "nein",
      none: "keine",
      figure: (span, meaning) => {
        if (!meaning) return span;
        return `${meaning === "limit" ? "leidet oder stirbt" : meanings[meaning]} ${span}`;
      },
      length: (size, { measure, as, sex }) =>
        `${size} ${lengthMeasures[measure]} (${[lengthMeanings[as], sex && sexWords[sex][0]].filter(Boolean).join(", ")})`,
      values: {
        "origin.conservation": ({ status, year }) =>
          [statuses[status], year && `(${year})`].filter(Boolean).join(" "),
        "size.lengthWeight": ({ a, b }) => `${exact(a)} × Länge ^ ${exact(b)}`,
        "water.flow": ({ min, max }) => [...new Set([min, max])].map(flowOf).join(" bis "),
        "water.airBreathing": ({ kind, from }) =>
          [airs[kind], from && `(${since[from]})`].filter(Boolean).join(" "),
        "size.lifespan": ({ usual, greatest }, size) =>
          [usual && size(usual), greatest && `höchstens ${size(greatest)}`].filter(Boolean).join(", "),
        "water.coolSeason": (season, size) =>
          season === "none"
            ? "keine"
            : [size(season), season.months && `${season.months} Monate lang`].filter(Boolean).join(", "),
        "space.baseLength": (needed, size) => `${size(needed.least)} für ${needed.for}`,
        "space.footprint": (needed, size) => `${size(needed.least)} für ${needed.for}`,
        "space.hides": ({ anyOf: kinds, each, holder: of, sharedBy = 1 }) =>
          [
            `${anyOf(kinds.map((kind) => hides[kind]))}, ${each} für ${holders[of]}`,
            sharedBy > 1 && `je ${sharedBy} Tiere ein Platz`,
          ]
            .filter(Boolean)
            .join(", "),
        "space.territory": (held, size) =>
          held === "none"
            ? "keines"
            : `${size(held.area)} ${parts[held.zone]}, Inhaber: ${holders[held.holder]}`,
        "social.group": ({ least, avoid }) =>
          [`mindestens ${least}`, avoid && `aber nicht ${avoid.min} bis ${avoid.max}`]
            .filter(Boolean)
            .join(", "),
        "appearance.looks": ({ tag, sex }) =>
          [looks[tag], sex && `(${sexWords[sex][1]})`].filter(Boolean).join(" "),
        "temperament.acts": ({ doer, does, target, when, from }) => {
          const [, several, after] = deeds[does];
          return [
            doer && sexWords[doer][1],
            several,
            targets[target] + after,
            when && when !== "always" && occasions[when].trim(),
            from && `(${since[from]})`,
          ]
            .filter(Boolean)
            .join(" ");
        },
        "predation.eats": ({ prey: of, greatest }, size) =>
          [prey[of], greatest && `bis ${size(greatest)}`].filter(Boolean).join(" "),
        "reproduction.interbreedsWith": scientificOf,
        "origin.regions": regionIn,
        "care.rehoming": ({ en, de }) => de ?? `auf Englisch: ${en}`,
      },
    },
    pictures: {
      shared: (figure, known, of) =>
        known < of
          ? `Gemeinsam haben die ${known} von ${of} mit Angaben: ${figure}.`
          : `Gemeinsam haben alle: ${figure}.`,
      apart: (one, other) => `Nichts haben alle gemeinsam: ${one} und ${other} liegen auseinander.`,
      unknown: "nicht bekannt",
      eitherSex: (figure) => `${figure} (ganze Art)`,
      setAside: "verworfen",
      marks: {
        kept: "Haltung",
        standIn: "Optimum; für die Haltung fehlt die Angabe",
        optimum: "Optimum",
        limit: "Grenze: jenseits davon leidet oder stirbt das Tier",
        open: "ohne angegebenes Ende",
        shared: "allen mit Angaben gemeinsam",
        source: "Angabe einer Quelle; wofür sie gilt, steht daneben",
        outline: "übliches erwachsenes Tier, Länge und Höhe im Maßstab",
        bar: "übliche Länge Erwachsener; Höhe nicht bekannt",
        greatest: "größte bekannte Länge",
        greatestOfEither: "größte bekannte Länge, gleich welchen Geschlechts",
        onlyGreatest: "größte Länge; die übliche ist nicht bekannt",
        reckoned: "Gesamtlänge ab der gepunkteten Linie, aus einem anderen Maß errechnet",
      },
    },
  };
}
