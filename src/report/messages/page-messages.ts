import type { Words } from "../../compatibility";
import type { Act, Hides, Kind } from "../../species";
import type { Messages } from "./messages";

/** The sections of a page, in their order. */
export type SectionId =
  | "glance"
  | "origin"
  | "size"
  | "water"
  | "tank"
  | "behaviour"
  | "company"
  | "feeding"
  | "breeding"
  | "forms"
  | "watch"
  | "certainty"
  | "cautions"
  | "sources";

/** How long grown animals are; each figure is empty where it is not known. */
export interface ToldLength {
  /** Of both sexes if absent. */
  readonly sex?: Words["sex"] | undefined;
  readonly usual: string;
  readonly greatest: string;
  /** What was measured: the whole animal from end to end, its shell, or the width of its disc. */
  readonly of: "whole" | "shell" | "disc";
}

/** What a species or form is called. */
export interface ToldName {
  readonly name: string;
  /** What several of it are called. */
  readonly several: string;
  /** Whether that is its scientific name, for want of another. */
  readonly scientific: boolean;
}

/** So many animals of a species, with their sexes where these matter. */
export interface ToldGroup extends ToldName {
  readonly count: number;
  readonly males: number;
  readonly females: number;
}

/** What animals do to others. */
export interface ToldAct extends Omit<Act, "target"> {
  readonly targets: readonly Act["target"][];
}

/** Why a companion was chosen. */
export type CompanionReason =
  | { readonly why: "settles-them" | "settled-by-them" | "harmless" | "leaves-alone" | "holds-its-own" }
  | { readonly why: "elsewhere"; readonly zones: readonly Words["zone"][] }
  | { readonly why: "same-home"; readonly region: string }
  | { readonly why: "same-water"; readonly temperature: string };

/** What a hunter takes of some kinds of animals, with lengths. */
export interface PreyLengths {
  readonly kinds: readonly Kind[];
  /** Up to which they are eaten; empty where no length keeps them safe. */
  readonly eaten: string;
  /** Up to which longer ones may be tried; empty where no length keeps them safe, absent where none are tried. */
  readonly tried?: string;
  /** Up to which those are eaten that are shaped like eels; absent where it is no more than of the others. */
  readonly eelLike?: string;
}

/** Why a sign may be seen, and what to do. */
export interface ToldSign {
  readonly why: string;
  readonly act: string;
}

/** What may be behind a sign. */
export type Trouble =
  | "nips-fins"
  | "nips-in-few"
  | "rivals"
  | "bites"
  | "chases"
  | "shy"
  | "settled-by"
  | "alone-in-need"
  | "slow-eater"
  | "fine-food"
  | "eats-others"
  | "jumps"
  | "oxygen"
  | "air"
  | "egg-eater";

/** How well facts are supported: how many rest on each basis. */
export interface ToldSupport {
  readonly known: number;
  readonly published: number;
  readonly practice: number;
  readonly recalled: number;
  readonly reckoned: number;
}

/** What the pages of species say. */
export interface PageWords {
  readonly headings: Readonly<Record<SectionId, string>>;
  /** Other names, and names that science has given up. */
  readonly alsoCalled: (names: readonly string[]) => string;
  /** Names that science has given up and older books still have. */
  readonly formerly: (synonyms: readonly string[]) => string;
  /** On the page of a form: of which species it was bred. */
  readonly formOf: (scientific: string) => string;
  /** The species or form as the subject of a sentence, and whether its verb is that of several. */
  readonly subject: (told: ToldName) => { readonly who: string; readonly many: boolean };
  /** So many of a species: `six bronze corydoras`, `a pair of honey gouramis`. */
  readonly group: (told: ToldGroup) => string;
  /** A region of a record, as one says it. */
  readonly region: (region: string) => string;
  /** The country or union whose law is told. */
  readonly jurisdiction: (jurisdiction: string) => string;
  /** What a law does. */
  readonly effect: (effect: string) => string;
  /** A species by its id, where its names are not known. */
  readonly scientific: (id: string) => string;
  readonly glance: {
    /** One sentence that says what it is: how it lives, where, how long it grows, and how warm its water is. */
    readonly summary: (told: {
      readonly kind: Kind;
      readonly living: Words["living"] | undefined;
      readonly zones: readonly Words["zone"][];
      readonly length: string;
      readonly temperature: string;
    }) => string;
    readonly terms: Readonly<
      Record<
        "length" | "temperature" | "pH" | "hardness" | "salinity" | "tank" | "number" | "food" | "life",
        string
      >
    >;
    /** `80 × 35 cm for 8`. */
    readonly tank: (sides: string, animals: number) => string;
    /** How many to keep: `six or more`, `a pair`; and with how many more than that things go wrong, which may be empty. */
    readonly number: (least: number, living: Words["living"] | undefined, amiss: string) => string;
    readonly know: string;
    /** That the record lacks these traits, so that nothing is judged of it. */
    readonly incomplete: (traits: readonly string[]) => string;
    /** That it is sold small and grows as long as this. */
    readonly grows: (length: string) => string;
    /** That it eats fish up to this length. */
    readonly hunts: (length: string) => string;
    /** That it grows as old as this. */
    readonly lives: (age: string) => string;
    readonly hazards: Readonly<Record<Words["hazard"], string>>;
    /** That these jurisdictions restrict it. */
    readonly laws: (jurisdictions: readonly string[]) => string;
    /** How threatened it is where it comes from. */
    readonly threatened: (status: Words["conservation"]) => string;
  };
  readonly origin: {
    /** Where it comes from. */
    readonly from: (regions: readonly string[], who: ToldName) => string;
    /** In which waters it lives there. */
    readonly waters: (waters: readonly Words["waters"][]) => string;
    readonly supply: Readonly<Record<Words["supply"], string>>;
    /** What the Red List has it under, and in which year; the year is not always stated. */
    readonly conservation: (status: Words["conservation"], year: number | undefined) => string;
  };
  readonly size: {
    /** How long a sex grows, usually and at most. */
    readonly length: (told: ToldLength) => string;
    /** At which age it is grown. */
    readonly grownAt: (age: string) => string;
    /** How old it usually grows and how old at most; either may be empty. */
    readonly lifespan: (usual: string, greatest: string) => string;
  };
  readonly water: {
    readonly table: string;
    readonly columns: readonly [trait: string, kept: string, optimum: string, limit: string, others: string];
    readonly rows: Readonly<
      Record<"temperature" | "pH" | "generalHardness" | "carbonateHardness" | "salinity", string>
    >;
    /** Which currents it is at home in. */
    readonly flow: (calmest: Words["flow"], strongest: Words["flow"]) => string;
    readonly oxygen: Readonly<Record<Words["oxygenNeed"], string>>;
    /** How it breathes air, and from which age. */
    readonly air: (kind: Words["airBreathing"], from: Words["stage"] | undefined) => string;
    /** That it needs a cool season of so many months. */
    readonly coolSeason: (temperature: string, months: string) => string;
    readonly saidTable: string;
    readonly saidColumns: readonly [trait: string, says: string, means: string, source: string, note: string];
    /** Why a statement was not adopted. */
    readonly setAside: (why: string) => string;
    /** Said of a figure whose bounds are those of a handbook's class. */
    readonly ofClass: string;
  };
  readonly tank: {
    /** The least tank for so many animals of the species. */
    readonly least: (told: {
      readonly group: string;
      readonly animals: number;
      readonly length: string;
      readonly floor: string;
      /** Sides that make the floor; empty where its length is not known. */
      readonly sides: string;
      /** The floor that one more asks for; empty where nobody says. */
      readonly further: string;
    }) => string;
    /** How high its tank must be. */
    readonly height: (height: string) => string;
    /** Where in the water it lives. */
    readonly zones: (zones: readonly Words["zone"][]) => string;
    /** How much of the tank, seen from above, is cover and how much is open; either may be empty. */
    readonly cover: (cover: string, openWater: string) => string;
    readonly grownIn: string;
    /** Which ground it needs; any does where the list is empty. */
    readonly ground: (grounds: readonly Words["ground"][]) => string;
    /** Which hiding places it needs, and how many. */
    readonly hides: (hides: Hides) => string;
    readonly noHides: string;
    readonly jumps: Readonly<Record<Words["jumps"], string>>;
    /** What it does to ground and plants. */
    readonly effects: (told: {
      readonly digs: boolean;
      readonly uproots: boolean;
      readonly eatsPlants: boolean;
    }) => string;
    /** Who defends how large a place, and where. */
    readonly territory: (holder: Words["territoryHolder"], sides: string, zone: Words["zone"]) => string;
  };
  readonly behaviour: {
    /** How it lives. */
    readonly living: (who: ToldName, living: Words["living"]) => string;
    /** How many to keep at least, and which numbers to avoid; the latter may be empty. */
    readonly least: (least: number, avoid: string) => string;
    /** How many live together at most. */
    readonly largest: (most: number) => string;
    /** How many females each male needs. */
    readonly females: (each: number) => string;
    readonly shy: string;
    readonly settledBy: string;
    readonly settles: string;
    readonly varies: string;
    /** What it does to whom, and when. */
    readonly act: (act: ToldAct) => string;
    readonly harmless: string;
  };
  readonly company: {
    /** In which tank, for how many of the species, and among how many species companions were sought. */
    readonly chosen: (told: {
      readonly who: string;
      readonly tank: string;
      readonly among: number;
    }) => string;
    /** That no companion was found, with the same as in `chosen`. */
    readonly none: (told: { readonly who: string; readonly tank: string; readonly among: number }) => string;
    readonly good: string;
    /** Those where nothing but room and cover keeps one from biting the other. */
    readonly watched: string;
    /** That laws name a companion, after why it was chosen. */
    readonly listed: string;
    /** Why a companion was chosen. */
    readonly why: (reason: CompanionReason) => string;
    /** That so many more are not named. */
    readonly more: (further: number) => string;
    readonly settlers: string;
    readonly settled: string;
    /** What a hunter takes of some kinds. */
    readonly eats: (told: PreyLengths) => string;
    /** Which eggs and young it takes. */
    readonly eatsYoung: (prey: readonly Words["prey"][]) => string;
    readonly eatsNothing: string;
    readonly prey: string;
    readonly hunters: string;
    readonly hungry: string;
    readonly lookAlikes: string;
  };
  readonly feeding: {
    readonly type: Readonly<Record<Words["dietType"], string>>;
    /** What to give it. */
    readonly given: (foods: readonly Words["food"][]) => string;
    /** What it finds in the wild. */
    readonly wild: (foods: readonly Words["food"][]) => string;
    /** Where in the water and at which hours it feeds. */
    readonly when: (places: readonly Words["zone"][], hours: readonly Words["light"][]) => string;
    readonly pace: Readonly<Record<Words["pace"], string>>;
  };
  readonly breeding: {
    readonly mode: Readonly<Record<Words["reproduction"], string>>;
    /** From which age on it breeds. */
    readonly from: (age: string) => string;
    /** That it eats eggs, young or both, its own too. */
    readonly eatsOwn: (eggs: boolean, young: boolean) => string;
    readonly crosses: string;
  };
  readonly forms: {
    /** How many forms have been bred from it. */
    readonly intro: (forms: number) => string;
    /** Whether the fins of a form are long or short. */
    readonly fins: (areLong: boolean) => string;
    readonly alike: string;
  };
  readonly watch: {
    /** A sign with what may be behind it and what to do, as sentences. */
    readonly told: (sign: string, troubles: readonly ToldSign[]) => string;
    readonly troubles: Readonly<Record<Trouble, ToldSign>>;
    readonly vet: string;
  };
  readonly certainty: {
    /** How many of the facts behind a page rest on what. */
    readonly support: (told: ToldSupport) => string;
    /** Which traits rest on common practice, or not without it. */
    readonly practice: (traits: readonly string[]) => string;
    /** Which traits are reckoned, or in part. */
    readonly reckoned: (traits: readonly string[]) => string;
    /** On which traits sources differ. */
    readonly disputed: (traits: readonly string[]) => string;
    /** Which traits nobody knows. */
    readonly unknown: (traits: readonly string[]) => string;
  };
  readonly cautions: {
    /** What a law does, by which instrument of which date; `recalled` if its text was not read. */
    readonly law: (
      jurisdiction: string,
      effect: string,
      instrument: string,
      date: string,
      recalled: boolean,
    ) => string;
    readonly lawDecides: string;
    readonly textDecides: string;
    readonly release: string;
    readonly vet: string;
    /** What it cannot bear, in a sentence; what fails in soft water goes by its kind. */
    readonly sensitive: (to: Words["sensitivity"], kind: Kind) => string;
  };
  readonly sources: {
    readonly recalled: string;
    readonly beside: string;
    /** That a source has it under an older name. */
    readonly under: (synonym: string) => string;
    /** That a source tells of a relative, which stands in. */
    readonly of: (relative: string) => string;
    /** Authors, the last joined by "and"; `others` if there are more. */
    readonly and: (names: readonly string[], others: boolean) => string;
  };
  readonly notes: string;
  /** Whether notes of records, which are English, belong on its pages. */
  readonly readsNotes: boolean;
}

/** Everything that reports and pages say, in one language. */
export interface PageMessages extends Messages {
  readonly page: PageWords;
}
