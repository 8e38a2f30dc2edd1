import * as classes from "./classes";
import type { Fact, Facts, Statement, Statements, TraitPath } from "./types";

/**
 * How the statements of a trait become one value: `one` of them, `figures` by meaning, `lengths` by sex and
 * measure, or `all` of them together.
 */
export type Way = "one" | "figures" | "lengths" | "all";

/** What a reader must know of a trait to state it, show it or convert it. */
export interface Trait {
  readonly label: string;
  readonly way: Way;
  /** What an observer sees, measures or counts. */
  readonly about: string;
  /** The unit of the numbers in its value. */
  readonly unit?: string;
  /** Values outside this span are mistakes of unit or typing. In the trait's unit. */
  readonly plausible?: { readonly min: number; readonly max: number };
  /** The words it may be answered with, each with an observable sentence. */
  readonly classes?: Readonly<Record<string, string>>;
  /** The classes ascend. */
  readonly ordinal?: true;
  /** A record without it is incomplete. */
  readonly essential?: true;
  /** The nearest term of an open vocabulary. */
  readonly term?: string;
}

/** Every trait: label, unit, classes and way of resolving. */
const traits = {
  "origin.regions": {
    label: "native range",
    way: "all",
    about: "Countries, islands, rivers or lakes it is native to, one a statement.",
    term: "http://rs.tdwg.org/dwc/terms/locality",
  },
  "origin.waters": {
    label: "waters",
    way: "all",
    about: "The kinds of water it lives in.",
    classes: classes.waters,
    term: "http://rs.tdwg.org/dwc/terms/habitat",
  },
  "origin.conservation": {
    label: "conservation status",
    way: "one",
    about: "Red List category of the IUCN and the year of assessment.",
    classes: classes.conservation,
  },
  "size.adultLength": {
    label: "adult length",
    way: "lengths",
    about: "Length of grown animals, by sex and by what was measured.",
    unit: "cm",
    plausible: { min: 0.5, max: 300 },
    essential: true,
    term: "http://purl.org/obo/owlATOL_0001660",
  },
  "size.bodyShape": {
    label: "body shape",
    way: "one",
    about: "The outline seen from the side.",
    classes: classes.bodyShape,
  },
  "size.bodyDepthShare": {
    label: "body depth",
    way: "one",
    about: "Greatest depth of the body as a share of standard length.",
    unit: "1",
    plausible: { min: 0.02, max: 1 },
  },
  "size.lengthWeight": {
    label: "length and weight",
    way: "one",
    about: "The constants of weight in g = a × (total length in cm) ^ b.",
    term: "http://purl.obolibrary.org/obo/VT_0001259",
  },
  "size.lifespan": {
    label: "lifespan",
    way: "one",
    about: "The age it reaches under good care.",
    unit: "a",
    plausible: { min: 0.3, max: 150 },
    term: "http://purl.obolibrary.org/obo/PATO_0000050",
  },
  "water.temperature": {
    label: "temperature",
    way: "figures",
    about: "Temperature of the water.",
    unit: "degC",
    plausible: { min: -2, max: 48 },
    essential: true,
    term: "http://eol.org/schema/terms/WaterTemperature",
  },
  "water.pH": {
    label: "pH",
    way: "figures",
    about: "Acidity of the water.",
    plausible: { min: 3, max: 11 },
    term: "http://eol.org/schema/terms/pH",
  },
  "water.generalHardness": {
    label: "general hardness",
    way: "figures",
    about: "Calcium and magnesium in the water.",
    unit: "dH",
    plausible: { min: 0, max: 60 },
  },
  "water.salinity": {
    label: "salinity",
    way: "figures",
    about: "Salt in the water; fresh water holds less than 0.5 g/kg.",
    unit: "g/kg",
    plausible: { min: 0, max: 120 },
    term: "http://eol.org/schema/terms/Salinity",
  },
  "water.flow": {
    label: "current",
    way: "one",
    about: "The currents it is kept in: below them it lacks movement or oxygen, above them it tires.",
    classes: classes.flow,
    ordinal: true,
  },
  "water.oxygenNeed": {
    label: "oxygen need",
    way: "one",
    about: "How soon it shows distress when the water is no longer moved.",
    classes: classes.oxygenNeed,
    ordinal: true,
  },
  "water.airBreathing": {
    label: "air breathing",
    way: "one",
    about: "Whether it takes air at the surface, and from which stage on.",
    classes: classes.airBreathing,
    ordinal: true,
  },
  "space.baseLength": {
    label: "tank length",
    way: "one",
    about: "The shortest tank for the stated number of adults, by the size it is sold as.",
    unit: "cm",
    plausible: { min: 10, max: 1500 },
  },
  "space.footprint": {
    label: "tank floor",
    way: "one",
    about: "The least floor for the stated number of adults, the number that the tank length is stated for.",
    unit: "cm2",
    plausible: { min: 100, max: 500000 },
  },
  "space.furtherFootprint": {
    label: "further floor",
    way: "one",
    about: "The floor that each animal past the stated number adds.",
    unit: "cm2",
    plausible: { min: 5, max: 100000 },
  },
  "space.height": {
    label: "tank height",
    way: "one",
    about: "The least height of the tank.",
    unit: "cm",
    plausible: { min: 10, max: 300 },
  },
  "space.zones": {
    label: "zones",
    way: "all",
    about: "Where in the water it spends most of its time, one zone a statement.",
    classes: classes.zone,
    essential: true,
    term: "http://rs.tdwg.org/dwc/terms/habitat",
  },
  "space.cover": {
    label: "cover",
    way: "one",
    about: "The least share of the plan area with plants, roots, stones or floating leaves to hide in.",
    unit: "1",
  },
  "space.openWater": {
    label: "open water",
    way: "one",
    about: "The least share of the plan area free to swim in; floating leaves may cover it.",
    unit: "1",
  },
  "space.grownInPlants": {
    label: "grown-in plants",
    way: "one",
    about: "Stays pale, hides or starves unless the planting is dense and established.",
  },
  "space.jumps": {
    label: "leaving the water",
    way: "one",
    about: "How readily it leaves the water, by jumping or climbing.",
    classes: classes.jumps,
    ordinal: true,
  },
  "space.territory": {
    label: "territory",
    way: "one",
    about: 'The floor or wall that one holder defends, and where; "none" if it holds none.',
    unit: "cm2",
    plausible: { min: 10, max: 200000 },
    classes: classes.territoryHolder,
  },
  "temperament.acts": {
    label: "acts",
    way: "all",
    about: 'What it does to others, to whom and when; "none" if it is known to leave all others alone.',
    classes: classes.does,
  },
  "temperament.shy": {
    label: "shyness",
    way: "one",
    about: "Stays hidden or pale in a bare tank or beside restless company.",
  },
  "temperament.varies": {
    label: "individual difference",
    way: "one",
    about: "Individuals differ so much that one may do what the next never does.",
  },
  "social.living": {
    label: "way of living",
    way: "one",
    about: "How many of its kind belong together.",
    classes: classes.living,
    essential: true,
    term: "http://eol.org/schema/terms/SocialSystem",
  },
  "social.group": {
    label: "group size",
    way: "one",
    about: "The least number to keep, and numbers to avoid because one animal then takes all the harm.",
    term: "http://eol.org/schema/terms/SocialGroupSize",
  },
  "social.femalesPerMale": {
    label: "females for each male",
    way: "one",
    about: "The least number of females to one male; 0 where the ratio does not matter.",
    plausible: { min: 0, max: 20 },
  },
  "social.settledBy": {
    label: "settled by company",
    way: "one",
    about: "Comes out of hiding only where calm fish swim in the open water.",
  },
  "social.settles": {
    label: "settles others",
    way: "one",
    about: "Swims calmly in the open and so brings shy fish out of hiding.",
  },
  "appearance.looks": {
    label: "markings",
    way: "all",
    about: "Markings or outlines by which another species may take it for its own.",
    classes: classes.look,
  },
  "appearance.longFins": {
    label: "long fins",
    way: "one",
    about: "A fin, wild or bred, trails or is drawn out far enough for another fish to seize.",
  },
  "diet.type": {
    label: "diet",
    way: "one",
    about: "What it lives on.",
    classes: classes.dietType,
    term: "http://eol.org/schema/terms/Diet",
  },
  "diet.foods": {
    label: "foods",
    way: "all",
    about: "What it takes, one food a statement.",
    classes: classes.food,
  },
  "diet.reach": {
    label: "feeding place",
    way: "all",
    about: "Where it takes food, one place a statement.",
    classes: classes.zone,
  },
  "diet.pace": {
    label: "feeding pace",
    way: "one",
    about: "How fast it comes to food.",
    classes: classes.pace,
    ordinal: true,
  },
  "diet.light": {
    label: "feeding time",
    way: "all",
    about: "When it feeds, one time a statement.",
    classes: classes.light,
  },
  "predation.eats": {
    label: "prey among tank mates",
    way: "all",
    about:
      'Living tank mates it swallows or picks apart, and up to which length; "none" if it eats no such animal.',
    unit: "cm",
    plausible: { min: 0.1, max: 200 },
    classes: classes.prey,
    essential: true,
    term: "http://purl.obolibrary.org/obo/RO_0002439",
  },
  "reproduction.mode": {
    label: "reproduction",
    way: "one",
    about: "How it breeds.",
    classes: classes.reproduction,
  },
  "reproduction.interbreedsWith": {
    label: "interbreeds with",
    way: "all",
    about: 'The id of a species with which it has offspring in a tank, or "none".',
  },
  "effects.digs": {
    label: "digging",
    way: "one",
    about: "Moves gravel or sand so that plants loosen or the water clouds.",
  },
  "effects.uproots": { label: "uprooting", way: "one", about: "Pulls rooted plants out." },
  "effects.eatsPlants": {
    label: "plant eating",
    way: "one",
    about: "Eats leaves of healthy plants even when well fed.",
  },
  "care.sensitive": {
    label: "sensitive to",
    way: "all",
    about: "What harms it sooner than its tank mates.",
    classes: classes.sensitivity,
  },
  "care.hazards": {
    label: "hazards to people",
    way: "all",
    about: "How it can hurt a person.",
    classes: classes.hazard,
  },
  "care.rehoming": {
    label: "rehoming",
    way: "one",
    about: "What to know before buying an animal that may have to move on.",
  },
} as const satisfies Record<TraitPath, Trait>;

/** The way in which a trait resolves. */
export type TraitWay<Path extends TraitPath> = (typeof traits)[Path]["way"];

/** Every trait by path, with the fields that any trait may have. */
export const traitTable: Readonly<Record<TraitPath, Trait>> = traits;

/** Every trait path, in the order of the table. */
export const traitPaths = /* @__PURE__ */ Object.keys(traits) as readonly TraitPath[];

/** The traits without which a record is incomplete. */
export const essentialTraits = /* @__PURE__ */ traitPaths.filter((path) => traitTable[path].essential);

/** `"water.temperature"` as section and name. */
export function splitPath(path: TraitPath): [string, string] {
  const dot = path.indexOf(".");
  return [path.slice(0, dot), path.slice(dot + 1)];
}

/** The fact of a trait, or undefined where it is unknown. */
export function factAt(facts: Facts, path: TraitPath): Fact<unknown> | undefined {
  const [section, name] = splitPath(path);
  return (facts as Readonly<Record<string, Readonly<Record<string, Fact<unknown>>> | undefined>>)[section]?.[
    name
  ];
}

/** The statements of a trait, as a record or one of its forms holds them. */
export function statementsOf(record: Statements, path: TraitPath): readonly Statement<unknown>[] {
  const [section, name] = splitPath(path);
  const sections = record as Readonly<
    Record<string, Readonly<Record<string, readonly Statement<unknown>[]>> | undefined>
  >;
  return sections[section]?.[name] ?? [];
}
