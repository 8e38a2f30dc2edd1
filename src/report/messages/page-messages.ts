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
  | { readonly why: "settles-them" | "settled-by-them" | "harmless" | "leaves-alone" }
  | { readonly why: "elsewhere"; readonly zones: readonly Words["zone"][] }
  | { readonly why: "same-home"; readonly region: string }
  | { readonly why: "same-water"; readonly temperature: string };

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
  | "egg-eater"
  | "many-young";

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
  readonly formerly: (synonyms: readonly string[]) => string;
  /** On the page of a form: of which species it was bred. */
  readonly formOf: (scientific: string) => string;
  /** The species or form as the subject of a sentence, and whether its verb is that of several. */
  readonly subject: (told: ToldName) => { readonly who: string; readonly many: boolean };
  /** So many of a species: `six bronze corydoras`, `a pair of honey gouramis`. */
  readonly group: (told: ToldGroup) => string;
  readonly region: (region: string) => string;
  readonly jurisdiction: (jurisdiction: string) => string;
  /** What a law does. */
  readonly effect: (effect: string) => string;
  /** A species by its id, where its names are not known. */
  readonly scientific: (id: string) => string;
  readonly glance: {
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
    readonly number: (least: number, living: Words["living"] | undefined) => string;
    readonly know: string;
    readonly incomplete: (traits: readonly string[]) => string;
    readonly grows: (length: string) => string;
    readonly hunts: (length: string) => string;
    readonly lives: (age: string) => string;
    readonly hazards: Readonly<Record<Words["hazard"], string>>;
    readonly laws: (jurisdictions: readonly string[]) => string;
    readonly threatened: (status: Words["conservation"]) => string;
  };
  readonly origin: {
    readonly from: (regions: readonly string[], who: ToldName) => string;
    readonly waters: (waters: readonly Words["waters"][]) => string;
    readonly supply: Readonly<Record<Words["supply"], string>>;
    readonly conservation: (status: Words["conservation"], year: number | undefined) => string;
  };
  readonly size: {
    readonly length: (told: ToldLength) => string;
    readonly grownAt: (age: string) => string;
    readonly lifespan: (usual: string, greatest: string) => string;
  };
  readonly water: {
    readonly table: string;
    readonly columns: readonly [trait: string, kept: string, optimum: string, limit: string, others: string];
    readonly rows: Readonly<
      Record<"temperature" | "pH" | "generalHardness" | "carbonateHardness" | "salinity", string>
    >;
    readonly flow: (calmest: Words["flow"], strongest: Words["flow"]) => string;
    readonly oxygen: Readonly<Record<Words["oxygenNeed"], string>>;
    readonly air: (kind: Words["airBreathing"], from: Words["stage"] | undefined) => string;
    readonly coolSeason: (temperature: string, months: string) => string;
    readonly saidTable: string;
    readonly saidColumns: readonly [trait: string, says: string, means: string, source: string, note: string];
    readonly setAside: (why: string) => string;
    /** Said of a figure whose bounds are those of a handbook's class. */
    readonly ofClass: string;
  };
  readonly tank: {
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
    readonly height: (height: string) => string;
    readonly zones: (zones: readonly Words["zone"][]) => string;
    readonly cover: (cover: string, openWater: string) => string;
    readonly grownIn: string;
    readonly ground: (grounds: readonly Words["ground"][]) => string;
    readonly hides: (hides: Hides) => string;
    readonly noHides: string;
    readonly jumps: Readonly<Record<Words["jumps"], string>>;
    readonly effects: (told: {
      readonly digs: boolean;
      readonly uproots: boolean;
      readonly eatsPlants: boolean;
    }) => string;
    readonly territory: (holder: Words["territoryHolder"], sides: string, zone: Words["zone"]) => string;
  };
  readonly behaviour: {
    readonly living: (who: ToldName, living: Words["living"]) => string;
    readonly least: (least: number, avoid: string) => string;
    readonly largest: (most: number) => string;
    readonly females: (each: number) => string;
    readonly shy: string;
    readonly settledBy: string;
    readonly settles: string;
    readonly varies: string;
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
    readonly none: (told: { readonly who: string; readonly tank: string; readonly among: number }) => string;
    readonly title: string;
    readonly why: (reason: CompanionReason) => string;
    readonly more: (further: number) => string;
    readonly settlers: string;
    readonly settled: string;
    /** What a hunter takes of a kind, with the lengths; the first is empty where no length keeps it safe. */
    readonly eats: (kinds: readonly Kind[], eaten: string, tried: string) => string;
    readonly eatsYoung: (prey: readonly Words["prey"][]) => string;
    readonly eatsNothing: string;
    readonly prey: string;
    readonly hunters: string;
    readonly hungry: string;
    readonly lookAlikes: string;
  };
  readonly feeding: {
    readonly type: Readonly<Record<Words["dietType"], string>>;
    readonly given: (foods: readonly Words["food"][]) => string;
    readonly wild: (foods: readonly Words["food"][]) => string;
    readonly when: (places: readonly Words["zone"][], hours: readonly Words["light"][]) => string;
    readonly pace: Readonly<Record<Words["pace"], string>>;
  };
  readonly breeding: {
    readonly mode: Readonly<Record<Words["reproduction"], string>>;
    readonly from: (age: string) => string;
    readonly eatsOwn: (eggs: boolean, young: boolean) => string;
    readonly crosses: string;
  };
  readonly forms: {
    readonly intro: (forms: number) => string;
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
    readonly support: (told: ToldSupport) => string;
    readonly weak: (traits: readonly string[]) => string;
    readonly disputed: (traits: readonly string[]) => string;
    readonly unknown: (traits: readonly string[]) => string;
  };
  readonly cautions: {
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
    readonly sensitive: Readonly<Record<Words["sensitivity"], string>>;
  };
  readonly sources: {
    readonly recalled: string;
    readonly beside: string;
    readonly under: (synonym: string) => string;
    readonly of: (relative: string) => string;
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
