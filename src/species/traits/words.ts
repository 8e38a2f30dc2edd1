import { frozen } from "../../frozen";
import * as classes from "./classes";
import type { TraitPath } from "./values";

/** What a reader must know of a trait to state it and to understand it. */
export interface TraitWords {
  readonly label: string;
  /** What an observer sees, measures or counts. */
  readonly about: string;
  /** The words it may be answered with, each with an observable sentence. */
  readonly classes?: Readonly<Record<string, string>>;
  /** The nearest term of an open vocabulary, as a URI. */
  readonly term?: string;
}

/** What a reader must know of each trait beside its label. */
export const traitWords: Readonly<Record<TraitPath, Omit<TraitWords, "label">>> = /* @__PURE__ */ frozen({
  "origin.regions": {
    about: "Countries, islands, rivers or lakes it is native to, one a statement.",
    term: "http://rs.tdwg.org/dwc/terms/locality",
  },
  "origin.waters": {
    about: "The kinds of water it lives in, one a statement.",
    classes: classes.waters,
    term: "http://rs.tdwg.org/dwc/terms/habitat",
  },
  "origin.supply": {
    about: "How those that are sold came to be.",
    classes: classes.supply,
  },
  "origin.conservation": {
    about: "Red List category of the IUCN and the year of assessment.",
    classes: classes.conservation,
  },
  "size.adultLength": {
    about: "Length of grown animals, by sex and by what was measured.",
    term: "http://purl.org/obo/owlATOL_0001660",
  },
  "size.standardShare": {
    about: "Standard length as a share of total length.",
  },
  "size.bodyShape": {
    about: "The outline seen from the side.",
    classes: classes.bodyShape,
  },
  "size.bodyDepthShare": {
    about: "Greatest depth of the body as a share of standard length.",
  },
  "size.lengthWeight": {
    about: "The constants of weight in g = a × (total length in cm) ^ b.",
    term: "http://purl.obolibrary.org/obo/VT_0001259",
  },
  "size.grownAt": {
    about: "The age at which it has nine tenths of its adult length.",
  },
  "size.lifespan": {
    about: "The age it reaches under good care, usually and at most.",
    term: "http://purl.obolibrary.org/obo/PATO_0000050",
  },
  "water.temperature": {
    about: "Temperature of the water.",
    term: "http://eol.org/schema/terms/WaterTemperature",
  },
  "water.pH": {
    about: "Acidity of the water.",
    term: "http://eol.org/schema/terms/pH",
  },
  "water.generalHardness": {
    about: "Calcium and magnesium in the water.",
  },
  "water.carbonateHardness": {
    about: "Carbonate and hydrogen carbonate in the water, which hold its pH: the alkalinity.",
  },
  "water.coolSeason": {
    about:
      'The temperature of a season each year without which it ails or does not breed, and for how many months; "none" if it needs none.',
  },
  "water.salinity": {
    about: "Salt in the water; fresh water holds less than 0.5 g/kg.",
    term: "http://eol.org/schema/terms/Salinity",
  },
  "water.flow": {
    about: "The currents it is kept in: below them it lacks movement or oxygen, above them it tires.",
    classes: classes.flow,
  },
  "water.oxygenNeed": {
    about: "How soon it shows distress when the water is no longer moved.",
    classes: classes.oxygenNeed,
  },
  "water.airBreathing": {
    about: "Whether it takes air at the surface, and from which stage on.",
    classes: classes.airBreathing,
  },
  "space.baseLength": {
    about: "The shortest tank for the stated number of adults, by the size it is sold as.",
  },
  "space.footprint": {
    about: "The least floor for the stated number of adults, the number that the tank length is stated for.",
  },
  "space.furtherFootprint": {
    about: "The floor that each animal past the stated number adds.",
  },
  "space.height": {
    about: "The least height of the tank.",
  },
  "space.zones": {
    about: "Where in the water it spends most of its time, one zone a statement.",
    classes: classes.zone,
    term: "http://rs.tdwg.org/dwc/terms/habitat",
  },
  "space.cover": {
    about: "The least share of the plan area with plants, roots, stones or floating leaves to hide in.",
  },
  "space.openWater": {
    about: "The least share of the plan area free to swim in; floating leaves may cover it.",
  },
  "space.grownInPlants": {
    about: "Stays pale, hides or starves unless the planting is dense and established.",
  },
  "space.substrate": {
    about:
      'Grounds it needs one of, one a statement: on others its barbels wear, or it cannot dig, sift or spawn; "none" if any will do.',
    classes: classes.ground,
  },
  "space.hides": {
    about:
      'What each holder needs to hide, sleep or spawn in, and how many; any of the kinds listed serves; "none" if it uses none.',
    classes: classes.hide,
  },
  "space.jumps": {
    about: "How readily it leaves the water, by jumping or climbing.",
    classes: classes.jumps,
  },
  "space.territory": {
    about: 'The floor or wall that one holder defends, and where; "none" if it holds none.',
    classes: classes.territoryHolder,
  },
  "temperament.acts": {
    about: 'What it does to others, to whom and when; "none" if it is known to leave all others alone.',
    classes: classes.does,
  },
  "temperament.shy": {
    about: "Stays hidden or pale in a bare tank or beside restless company.",
  },
  "temperament.varies": {
    about: "Individuals differ so much that one may do what the next never does.",
  },
  "social.living": {
    about: "How many of its kind belong together.",
    classes: classes.living,
    term: "http://eol.org/schema/terms/SocialSystem",
  },
  "social.group": {
    about: "The least number to keep, and numbers to avoid because one animal then takes all the harm.",
    term: "http://eol.org/schema/terms/SocialGroupSize",
  },
  "social.largestGroup": {
    about: "The most that live together for good: past it the weaker are driven out or killed.",
  },
  "social.femalesPerMale": {
    about: "The least number of females to one male; 0 where the ratio does not matter.",
  },
  "social.settledBy": {
    about: "Comes out of hiding only where calm fish swim in the open water.",
  },
  "social.settles": {
    about: "Swims calmly in the open and so brings shy fish out of hiding.",
  },
  "appearance.looks": {
    about: "Markings or outlines by which another species may take it for its own.",
    classes: classes.look,
  },
  "appearance.longFins": {
    about: "A fin, wild or bred, trails or is drawn out far enough for another fish to seize.",
  },
  "diet.type": {
    about: "What it lives on.",
    classes: classes.dietType,
    term: "http://eol.org/schema/terms/Diet",
  },
  "diet.foods": {
    about: "What it takes, one food a statement.",
    classes: classes.food,
  },
  "diet.reach": {
    about: "Where it takes food, one place a statement.",
    classes: classes.zone,
  },
  "diet.pace": {
    about: "How fast it comes to food.",
    classes: classes.pace,
  },
  "diet.light": {
    about: "When it feeds, one time a statement.",
    classes: classes.light,
  },
  "predation.eats": {
    about:
      'Living tank mates it swallows or picks apart, and up to which length: every kind it eats, one a statement; a kind that is not named is left alone. "none" if it eats no such animal.',
    classes: classes.prey,
    term: "http://purl.obolibrary.org/obo/RO_0002439",
  },
  "reproduction.mode": {
    about: "How it breeds.",
    classes: classes.reproduction,
  },
  "reproduction.breedsFrom": {
    about: "The youngest age at which it breeds.",
  },
  "reproduction.interbreedsWith": {
    about: 'The id of a species with which it has offspring in a tank, or "none".',
  },
  "effects.digs": {
    about: "Moves gravel or sand so that plants loosen or the water clouds.",
  },
  "effects.uproots": {
    about: "Pulls rooted plants out.",
  },
  "effects.eatsPlants": {
    about: "Eats leaves of healthy plants even when well fed.",
  },
  "care.sensitive": {
    about: "What harms it sooner than its tank mates.",
    classes: classes.sensitivity,
  },
  "care.hazards": {
    about: "How it can hurt a person.",
    classes: classes.hazard,
  },
  "care.rehoming": {
    about: "What to know before buying an animal that may have to move on.",
  },
});
