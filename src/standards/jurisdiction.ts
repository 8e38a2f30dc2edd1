import type { Range } from "../ranges";
import type { LengthName } from "./fishes/lengths";
import type { TankSideName, VolumeName } from "./tank-measures";

/** How far a requirement binds. */
export type Force = "binding" | "municipal" | "advice" | "guidance for authorities";

/** Litres up to a length of fish in cm, that length included; without `upTo`, for every length. */
export interface LengthClass {
  readonly upTo?: number;
  readonly litres: number;
}

/** What a requirement compares, by kind. One file of `kinds` judges each. */
export type Measurable =
  | { readonly kind: "least-volume"; readonly litres: number; readonly of: VolumeName }
  | {
      readonly kind: "litres-each-centimetre" | "litres-each-fish";
      /** The shortest fish first. */
      readonly classes: readonly LengthClass[];
      readonly by: LengthName;
      readonly of: VolumeName;
    }
  | {
      readonly kind: "body-lengths";
      readonly side: TankSideName;
      /** How many body lengths of the largest fish. */
      readonly lengths: number;
      readonly by: LengthName;
      /** Ids of the species it is about; all fish if absent. */
      readonly species?: readonly string[];
    }
  | {
      readonly kind: "large-fish-floor";
      /** Adult total length in cm. */
      readonly longerThan: number;
      /** Families that count at any length. */
      readonly taxa: readonly string[];
      /** m². */
      readonly forTwo: number;
      /** m². */
      readonly eachMore: number;
    }
  | ({ readonly kind: "front-edge" } & FrontEdge)
  | ({ readonly kind: "own-group" } & OwnGroup)
  | { readonly kind: "shoalers" }
  /** °dH; a range where the text states one. */
  | { readonly kind: "hardness-floor"; readonly least: Range }
  | { readonly kind: "straight-walls" }
  | { readonly kind: "no-sphere" }
  | {
      readonly kind: "permit";
      /** Adult total length in cm. */
      readonly longerThan: number;
      /** Families that need it at any length. */
      readonly taxa: readonly string[];
    }
  | {
      readonly kind: "untold";
      /** The plan does not tell, the text states no figure, or its figures have not been read. */
      readonly because: "not-given" | "no-figure" | "not-read";
      /** Ids of the species it is about; whatever lives in the tank if absent. */
      readonly species?: readonly string[];
    };

/** A longest side for one species. */
interface FrontEdge {
  readonly species: string;
  readonly centimetres: number;
  /** The edge must be longer than that. */
  readonly beyond?: boolean;
}

/** One species with its own kind. */
interface OwnGroup {
  readonly species: string;
  /** Absent: not alone, and no number is stated. */
  readonly least?: number;
}

/** Where in the article a line of a table stands. */
interface Line {
  readonly at: string;
}

/** A table of species. Each line asks for one thing by itself. */
export type SpeciesTable =
  | { readonly kind: "front-edges"; readonly table: readonly (FrontEdge & Line)[] }
  | { readonly kind: "own-groups"; readonly table: readonly (OwnGroup & Line)[] };

/** What a requirement asks, as its file says it: things for single species stand in tables. */
type Rule = Exclude<Measurable, { readonly kind: "front-edge" | "own-group" }> | SpeciesTable;

/** What one kind compares. */
export type OfKind<Kind extends Measurable["kind"]> = Extract<Measurable, { readonly kind: Kind }>;

/** One thing that an instrument asks for. */
export interface Requirement {
  /** Unique within the jurisdiction. */
  readonly id: string;
  readonly article: string;
  readonly force: Force;
  /** Whether the figure was read or recalled. */
  readonly basis: "read" | "memory";
  /** Whom the text is about: fish alone, the young among them, or any animal in the water. */
  readonly covers: "fish" | "young fish" | "animals";
  /** What it asks, in one sentence. */
  readonly asks: string;
  /** What the text excepts, and how it was read. */
  readonly note?: string;
  readonly rule: Rule;
}

/** A law, a municipal regulation or an official guide. */
interface Instrument {
  /** Title and number. */
  readonly title: string;
  /**
   * When the act was adopted or the report published, in the version that was read: of an act changed since, when that
   * change was. A day, or a year where no day is known; absent where the copy shows none.
   */
  readonly date?: string;
  /** Where the text in force is found, and which authority is competent. */
  readonly caution: string;
  readonly requirements: readonly Requirement[];
}

/** One file of `data/standards`. */
export interface Jurisdiction {
  /** The name of the file. */
  readonly id: string;
  /** Country, and city of municipal rules. */
  readonly name: string;
  readonly instruments: readonly Instrument[];
}
