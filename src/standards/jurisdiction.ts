import type { Range } from "../ranges";
import type { LengthName } from "./lengths";
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
  | {
      readonly kind: "front-edge";
      readonly species: string;
      readonly centimetres: number;
      /** The edge must be longer than that. */
      readonly beyond?: boolean;
    }
  | {
      readonly kind: "own-group";
      readonly species: string;
      /** Absent: not alone, and no number is stated. */
      readonly least?: number;
    }
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
  /** The plan does not tell, the text states no figure, or its figures have not been read. */
  | { readonly kind: "untold"; readonly because: "not-given" | "no-figure" | "not-read" };

/** What one kind compares. */
export type OfKind<Kind extends Measurable["kind"]> = Extract<Measurable, { readonly kind: Kind }>;

/** One thing that an instrument asks for. */
interface Requirement {
  /** Unique within the jurisdiction. */
  readonly id: string;
  readonly article: string;
  readonly force: Force;
  /** Whether the figure was read or recalled. */
  readonly basis: "read" | "memory";
  /** Whom the text is about: fish alone, or any animal in the water. */
  readonly covers: "fish" | "animals";
  /** What it asks, in one sentence. */
  readonly asks: string;
  /** What the text excepts, and how it was read. */
  readonly note?: string;
  readonly rule: Measurable;
}

/** A law, a municipal regulation or an official guide. */
interface Instrument {
  /** Title and number. */
  readonly title: string;
  /** Year or day of the text that was read; absent where the copy shows none. */
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
