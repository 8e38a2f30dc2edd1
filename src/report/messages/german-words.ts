import type { Words } from "../../compatibility";
import type { FactName } from "../../plan";
import type { Messages } from "./messages";
import type { Things } from "./sentences";

// Words that sentences, tables and pages have in common.

export const places: Readonly<Record<Words["zone"], string>> = {
  surface: "an der Oberfläche",
  midwater: "im freien Wasser",
  bottom: "am Boden",
};

const grounds: Readonly<Record<Words["ground"], string>> = {
  bare: "kahles Glas",
  sand: "Sand",
  "fine-gravel": "feiner Kies",
  "coarse-gravel": "grober Kies",
  pebbles: "runde Steine",
};

/** The grounds as the object of a verb. */
export const groundsHad: Readonly<Record<Words["ground"], string>> = {
  ...grounds,
  "fine-gravel": "feinen Kies",
  "coarse-gravel": "groben Kies",
};

export const targets: Readonly<Record<Words["target"], string>> = {
  "own-sex": "Artgenossen des eigenen Geschlechts",
  "other-sex": "Artgenossen des anderen Geschlechts",
  "own-kind": "Artgenossen",
  "look-alike": "ähnlich aussehende Fische",
  "long-finned": "langflossige Fische",
  smaller: "kleinere Tiere",
  any: "alle in der Nähe",
};

export const prey: Readonly<Record<Words["prey"], string>> = {
  egg: "Eier",
  fry: "Fischlarven",
  fish: "Fische",
  shrimplet: "junge Garnelen",
  shrimp: "Garnelen",
  snail: "Schnecken",
  "young-snail": "junge Schnecken",
  crayfish: "Krebse",
  "young-crayfish": "junge Krebse",
  crab: "Krabben",
  "young-crab": "junge Krabben",
  mussel: "Muscheln",
  frog: "Frösche",
  tadpole: "Kaulquappen",
};

export const ranges: Messages["ranges"] = {
  atLeast: (min, unit) => `mindestens ${min}${unit}`,
  atMost: (max, unit) => `höchstens ${max}${unit}`,
  between: (min, max, unit) => `${min} bis ${max}${unit}`,
  below: (min) => `unter ${min}`,
  above: (max) => `über ${max}`,
  outside: (span) => `außerhalb von ${span}`,
  across: (length, width, unit) => `${length} × ${width}${unit}`,
};

export const basis: Messages["basis"] = {
  published: "veröffentlicht",
  curated: "aus mehreren Quellen abgewogen",
  memory: "aus dem Gedächtnis, ungeprüft",
  "common-practice": "gängige Praxis",
  observed: "von Haltern beobachtet",
  derived: "aus dem Nächstbekannten erschlossen",
};

/** A verb and what follows whom it falls on. */
type Deed = readonly [one: string, several: string, after: string];

export const deeds: Readonly<Record<Words["does"], Deed>> = {
  chases: ["jagt", "jagen", ""],
  bites: ["beißt", "beißen", ""],
  kills: ["tötet", "töten", ""],
  "nips-fins": ["verletzt", "verletzen", " an den Flossen"],
  "rasps-mucus": ["verletzt", "verletzen", " an der Schleimhaut"],
  "robs-food": ["drängt", "drängen", " vom Futter ab"],
};

export const occasions: Readonly<Record<Words["when"], string>> = {
  always: "",
  breeding: " in der Fortpflanzungszeit",
  "guarding-brood": " beim Bewachen von Eiern oder Jungen",
  feeding: " am Futter",
  crowded: " dort, wo kein Platz zum Ausweichen ist",
};

/** What stands behind whom a deed falls on: its end, and when it is done. */
export const doneWhen = (after: string, when: Words["when"] = "always") =>
  when === "crowded" ? `${after}${occasions.crowded}` : `${occasions[when]}${after}`;

export const sexWords: Readonly<
  Record<Words["sex"], readonly [one: string, several: string, adjective: string]>
> = {
  male: ["Männchen", "Männchen", "männliche"],
  female: ["Weibchen", "Weibchen", "weibliche"],
};

export const airs: Readonly<Record<Words["airBreathing"], string>> = {
  none: "holt nie Luft",
  facultative: "holt bei Sauerstoffmangel Luft",
  obligate: "ertrinkt ohne Luft von der Oberfläche",
};

export const statuses: Readonly<Record<Words["conservation"], string>> = {
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

export const holders: Readonly<Record<Words["territoryHolder"], string>> = {
  male: "jedes Männchen",
  female: "jedes Weibchen",
  pair: "ein Paar",
  each: "jedes Tier",
};

export const parts: Readonly<Record<Words["zone"], string>> = {
  ...places,
  surface: "nahe der Oberfläche",
};

export const plantHarm: Readonly<Record<Words["plantHarm"], readonly [one: string, several: string]>> = {
  eats: ["frisst Pflanzen", "fressen Pflanzen"],
  uproots: ["reißt Pflanzen aus", "reißen Pflanzen aus"],
  digs: ["gräbt, sodass Pflanzen sich lösen", "graben, sodass Pflanzen sich lösen"],
};

export const feedingHours: Readonly<Record<Words["light"], string>> = {
  day: "am Tag",
  dusk: "in der Dämmerung",
  night: "im Dunkeln",
};

const flows: Readonly<Record<Words["flow"], string>> = {
  still: "stehend",
  gentle: "schwach",
  moderate: "mäßig",
  strong: "stark",
};

export const flowOf = (word: string | boolean | undefined) =>
  typeof word === "string" && Object.hasOwn(flows, word) ? flows[word as Words["flow"]] : String(word);

/** What water does in a current between two. */
export function flowing(from: string | boolean | undefined, to: string | boolean | undefined): string {
  if (to === "still") return "das Wasser stillsteht";
  if (from === "still") return `das Wasser höchstens ${flowOf(to)} strömt`;
  return `das Wasser ${[...new Set([from, to])].map(flowOf).join(" bis ")} strömt`;
}

/** What a plan may say or leave open. */
export const asked: Readonly<Record<FactName, string>> = {
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
export const things: Things = {
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

/** What is given in place of what grows. */
export const grown = { plants: "Gemüse und Blätter", wood: "Holz zum Raspeln" } as const;

export const foods = {
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
  ...grown,
  detritus: "Detritus",
} satisfies Readonly<Record<Words["food"], string>>;

export const hides: Readonly<Record<Words["hide"], string>> = {
  caves: "Höhlen",
  shells: "leere Schneckenhäuser",
  wood: "Wurzeln",
  leaves: "Laub",
  rocks: "Steinhaufen",
};

export const stages: Readonly<Record<Words["stage"], string>> = {
  egg: "Ei",
  fry: "Larve",
  juvenile: "jung",
  adult: "ausgewachsen",
};

/** From which stage on. */
export const since: Readonly<Record<Words["stage"], string>> = {
  egg: "schon im Ei",
  fry: "schon als Larve",
  juvenile: "schon als Jungtier",
  adult: "sobald ausgewachsen",
};

export const meanings: Readonly<Record<Words["waterMeaning"], string>> = {
  kept: "Haltung",
  optimum: "Optimum",
  tolerated: "erträglich",
  limit: "Grenze",
  wild: "Natur",
  tested: "Versuch",
};

export const looks: Readonly<Record<Words["look"], string>> = {
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

export const lengthMeanings: Readonly<Record<Words["lengthMeaning"], string>> = {
  usual: "gewöhnlich",
  greatest: "höchstens",
};

export const lengthMeasures: Readonly<Record<Words["lengthMeasure"], string>> = {
  TL: "Gesamtlänge",
  SL: "Standardlänge",
  FL: "Gabellänge",
  body: "Körperlänge",
  shell: "Gehäuse",
  disc: "Scheibe",
  unstated: "Messweise ungenannt",
};

export const words: Messages["words"] = {
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
  likeness: { markings: "Zeichnung", build: "Gestalt" },
  temper: {
    shyer: "scheuer als die meisten",
    typical: "wie die meisten",
    bolder: "mutiger als die meisten",
    bully: "ein Raufbold",
  },
  planting: { none: "keine", planted: "bepflanzt", "grown-in": "eingewachsen" },
};

export const traits: Messages["traits"] = {
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
