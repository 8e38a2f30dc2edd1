import type { PartialRange, Range } from "../../ranges";
import type { FlowClass, Sex, Stage, Zone } from "./class-names";
import type * as classes from "./classes";

/** A value, or the word for what is known to be absent; that word stands alone. */
export type OrNone<Value> = Value | "none";

/** A text in the languages that reports speak: in English, and in German where somebody wrote it. */
export interface Texts {
  readonly en: string;
  readonly de?: string | undefined;
}

/** A size that a stated number of animals needs. */
export interface SizeForGroup {
  /** The least size, in the trait's unit. */
  readonly least: number;
  /** The number of animals that it is stated for. */
  readonly for: number;
}

/** What is to be had by each holder to hide, sleep or spawn in. */
export interface Hides {
  /** Any of these serves. */
  readonly anyOf: readonly (keyof typeof classes.hide)[];
  /** How many for each holder. */
  readonly each: number;
  readonly holder: keyof typeof classes.territoryHolder;
  /** How many holders lie in one place together; one by itself if absent. */
  readonly sharedBy?: number | undefined;
}

/** A part of the year in which an animal is kept cooler. */
export interface CoolSeason extends PartialRange {
  /** How long it lasts. */
  readonly months?: number | undefined;
}

/** What an animal does to another. */
export interface Act {
  readonly does: keyof typeof classes.does;
  /** Who does it; either sex if absent. */
  readonly doer?: Sex | undefined;
  /** Whom it falls on. */
  readonly target: keyof typeof classes.target;
  /** When; at any time if absent. */
  readonly when?: keyof typeof classes.when | undefined;
  /** The stage from which on it does so; at any stage if absent. */
  readonly from?: Stage | undefined;
}

/** What one statement of each trait of origin holds. */
export interface OriginValues {
  /** A country, an island, a river or a lake. */
  readonly regions: string;
  readonly waters: keyof typeof classes.waters;
  readonly supply: keyof typeof classes.supply;
  readonly conservation: {
    readonly status: keyof typeof classes.conservation;
    /** The year of assessment. */
    readonly year?: number | undefined;
  };
}

/** What one statement of each trait of size holds. */
export interface SizeValues {
  /** cm. */
  readonly adultLength: number;
  /** Standard length as a share of total length, 0 to 1. */
  readonly standardShare: number;
  readonly bodyShape: keyof typeof classes.bodyShape;
  /** Greatest depth of the body as a share of standard length, 0 to 1. */
  readonly bodyDepthShare: number;
  /** Weight in g is a × (total length in cm) ^ b. */
  readonly lengthWeight: { readonly a: number; readonly b: number };
  /** Months. */
  readonly grownAt: number;
  /** Years. */
  readonly lifespan: number;
}

/** What one statement of each trait of water holds. */
export interface WaterValues {
  /** °C. */
  readonly temperature: PartialRange;
  readonly pH: PartialRange;
  /** °dH. */
  readonly generalHardness: PartialRange;
  /** °dH. */
  readonly carbonateHardness: PartialRange;
  /** g/kg. */
  readonly salinity: PartialRange;
  readonly coolSeason: OrNone<CoolSeason>;
  /** From the calmest current to the strongest. */
  readonly flow: { readonly min: FlowClass; readonly max: FlowClass };
  readonly oxygenNeed: keyof typeof classes.oxygenNeed;
  readonly airBreathing: {
    readonly kind: keyof typeof classes.airBreathing;
    /** The stage from which on it takes air. */
    readonly from?: Stage | undefined;
  };
}

/** What one statement of each trait of space holds. */
export interface SpaceValues {
  /** cm. */
  readonly baseLength: SizeForGroup;
  /** cm². */
  readonly footprint: SizeForGroup;
  /** cm². */
  readonly furtherFootprint: number;
  /** cm. */
  readonly height: number;
  readonly zones: Zone;
  /** Share of the plan area, 0 to 1. */
  readonly cover: number;
  /** Share of the plan area, 0 to 1. */
  readonly openWater: number;
  readonly grownInPlants: boolean;
  readonly substrate: OrNone<keyof typeof classes.ground>;
  readonly hides: OrNone<Hides>;
  readonly jumps: keyof typeof classes.jumps;
  readonly territory: OrNone<{
    /** cm². */
    readonly area: number;
    readonly zone: Zone;
    readonly holder: keyof typeof classes.territoryHolder;
  }>;
}

/** What one statement of each trait of temperament holds. */
export interface TemperamentValues {
  readonly acts: OrNone<Act>;
  readonly shy: boolean;
  readonly varies: boolean;
}

/** What one statement of each social trait holds. */
export interface SocialValues {
  readonly living: keyof typeof classes.living;
  readonly group: {
    /** The least number of animals. */
    readonly least: number;
    /** Numbers of animals to keep away from. */
    readonly avoid?: Range | undefined;
  };
  /** The greatest number of animals. */
  readonly largestGroup: number;
  /** The least number of females to one male; 0 where the ratio does not matter, in a harem too. */
  readonly femalesPerMale: number;
  readonly settledBy: boolean;
  readonly settles: boolean;
}

/** What one statement of each trait of appearance holds. */
export interface AppearanceValues {
  readonly looks: OrNone<{
    readonly tag: keyof typeof classes.look;
    /** The sex that looks so; both if absent. */
    readonly sex?: Sex | undefined;
  }>;
  readonly longFins: boolean;
}

/** What one statement of each trait of diet holds. */
export interface DietValues {
  readonly type: keyof typeof classes.dietType;
  readonly foods: keyof typeof classes.food;
  readonly reach: Zone;
  readonly pace: keyof typeof classes.pace;
  readonly light: keyof typeof classes.light;
}

/** What one statement of each trait of predation holds. */
export interface PredationValues {
  readonly eats: OrNone<{
    readonly prey: keyof typeof classes.prey;
    /** The greatest length it takes, cm. */
    readonly greatest?: number | undefined;
  }>;
}

/** What one statement of each trait of reproduction holds. */
export interface ReproductionValues {
  readonly mode: keyof typeof classes.reproduction;
  /** Months. */
  readonly breedsFrom: number;
  /** The id of a species. */
  readonly interbreedsWith: OrNone<string>;
}

/** What one statement of each effect on the tank holds. */
export interface EffectsValues {
  readonly digs: boolean;
  readonly uproots: boolean;
  readonly eatsPlants: boolean;
}

/** What one statement of each trait of care holds. */
export interface CareValues {
  readonly sensitive: OrNone<keyof typeof classes.sensitivity>;
  readonly hazards: OrNone<keyof typeof classes.hazard>;
  /** A sentence. */
  readonly rehoming: Texts;
}

/** What one statement of each trait holds, by section and trait, in the trait's own unit. */
export interface StatedValues {
  readonly origin: OriginValues;
  readonly size: SizeValues;
  readonly water: WaterValues;
  readonly space: SpaceValues;
  readonly temperament: TemperamentValues;
  readonly social: SocialValues;
  readonly appearance: AppearanceValues;
  readonly diet: DietValues;
  readonly predation: PredationValues;
  readonly reproduction: ReproductionValues;
  readonly effects: EffectsValues;
  readonly care: CareValues;
}

/** The sections of a record: `origin`, `size`, `water`, … */
export type Section = keyof StatedValues;

/** Every trait by section and name: `"water.temperature"`. */
export type TraitPath = { [S in Section]: `${S}.${keyof StatedValues[S] & string}` }[Section];

/** What one statement of a trait holds. */
export type StatedValue<Path extends TraitPath> = Path extends `${infer S extends Section}.${infer Name}`
  ? Name extends keyof StatedValues[S]
    ? StatedValues[S][Name]
    : never
  : never;

/** `{ section: { trait: … } }` with any subset of the traits. */
export type InSections<Held extends { [Path in TraitPath]: unknown }> = {
  readonly [S in Section]?:
    | {
        readonly [Name in keyof StatedValues[S] & string]?: Held[`${S}.${Name}` & TraitPath] | undefined;
      }
    | undefined;
};
