import type * as z from "zod";
import type { values } from "../schema/values";
import type * as classes from "./classes";
import type { TraitWay } from "./traits";

/** What one statement of each trait holds, by section and trait. */
type Values = typeof values;

/** The sections of a record: `origin`, `size`, `water`, … */
export type Section = keyof Values;

/** Every trait by section and name: `"water.temperature"`. */
export type TraitPath = { [S in Section]: `${S}.${keyof Values[S] & string}` }[Section];

/** What one statement of a trait holds. */
export type Said<Path extends TraitPath> = Path extends `${infer S extends Section}.${infer Name}`
  ? Name extends keyof Values[S]
    ? Values[S][Name] extends z.ZodType
      ? z.infer<Values[S][Name]>
      : never
    : never
  : never;

/** What sort of animal a species is. */
export type Kind = keyof typeof classes.kind;
/** The sexes that a statement, a length or an act may be about. */
export type Sex = keyof typeof classes.sex;
/** The stages of life, the youngest first. */
export type Stage = keyof typeof classes.stage;
/** The parts of the water. */
export type Zone = keyof typeof classes.zone;
/** Currents, the calmest first. */
export type FlowClass = keyof typeof classes.flow;
/** What a figure of water means. */
export type WaterMeaning = keyof typeof classes.waterMeaning;
/** What a length means. */
export type LengthMeaning = keyof typeof classes.lengthMeaning;
/** What a length was measured as. */
export type LengthMeasure = keyof typeof classes.lengthMeasure;

/** What one source said of one trait. */
export interface Statement<Value> {
  /** A key of the record's `sources`, or `common-practice`, or `curator`. */
  readonly by: string;
  readonly value?: Value | undefined;
  /** The source's unit where it is not the trait's own. */
  readonly unit?: string | undefined;
  /** What a figure of water or a length means. */
  readonly as?: WaterMeaning | LengthMeaning | undefined;
  readonly sex?: Sex | undefined;
  readonly stage?: Stage | undefined;
  /** What a length was measured as. */
  readonly measure?: LengthMeasure | undefined;
  /** Where in the source, if it is not where the source entry points. */
  readonly at?: string | undefined;
  readonly note?: string | undefined;
  /** Why this statement is the one to use. */
  readonly adopt?: string | undefined;
  /** Why this statement is not to be used. */
  readonly setAside?: string | undefined;
}

/** A source as one record cites it. */
export interface SourceReference {
  /** The id of a file in `data/sources`. */
  readonly cite: string;
  /** Page, row or address within the source. */
  readonly at?: string | undefined;
  /** The value was recalled, the source not read. */
  readonly memory?: true | undefined;
  /** The source this one copies from; sources with one root count once. Defaults to `cite`. */
  readonly root?: string | undefined;
}

/** What a species is called in science, and where it belongs. */
export interface Taxonomy {
  /** The accepted scientific name. */
  readonly name: string;
  /** Author and year, as the code of nomenclature writes them. */
  readonly authority: string;
  readonly family: string;
  readonly order: string;
  readonly kind: Kind;
  readonly synonyms?: readonly string[] | undefined;
  readonly note?: string | undefined;
}

/** Vernacular names by language (BCP 47), the commonest first. */
export type Names = Readonly<Record<string, readonly string[]>>;

/** Key in another database, by the database's name. Always strings. */
export type Identifiers = Readonly<Record<string, string>>;

/** `{ section: { trait: … } }` with any subset of the traits. */
export type InSections<Held extends { [Path in TraitPath]: unknown }> = {
  readonly [S in Section]?:
    | {
        readonly [Path in Extract<TraitPath, `${S}.${string}`> as Path extends `${S}.${infer Name}`
          ? Name
          : never]?: Held[Path] | undefined;
      }
    | undefined;
};

/** The statements of a record or of a form. */
export type Statements = InSections<{ [Path in TraitPath]: readonly Statement<Said<Path>>[] }>;

/** A form bred in captivity: what differs from the species. */
export type FormRecord = { readonly names: Names } & Statements;

/** One file of `data/species`: what sources said. */
export type SpeciesRecord = {
  readonly id: string;
  readonly taxonomy: Taxonomy;
  readonly names: Names;
  readonly identifiers?: Identifiers | undefined;
  readonly sources: Readonly<Record<string, SourceReference>>;
  readonly forms?: Readonly<Record<string, FormRecord>> | undefined;
} & Statements;

/** How well a value is supported, the strongest first. */
export type Basis = "published" | "curated" | "memory" | "common-practice";

/** One resolved trait. */
export interface Fact<Value> {
  readonly value: Value;
  /** The weakest basis of the statements used. */
  readonly basis: Basis;
  /** Whole other values that a source supports. */
  readonly also?: readonly Value[] | undefined;
}

/** Figures of one trait by meaning. */
export type Figures<Value> = {
  /** The span to keep it in. */
  readonly kept: Value;
  /** Set where no source states `kept` and the optimum stands in for it. */
  readonly standIn?: true | undefined;
} & { readonly [Meaning in Exclude<WaterMeaning, "kept">]?: Value | undefined };

/** An adult length. */
export interface AdultLength {
  /** As stated, in cm. */
  readonly length: number;
  readonly measure: LengthMeasure;
  readonly as: LengthMeaning;
  readonly sex?: Sex | undefined;
  /** Total length in cm; a span where the source measured something else or did not say what. */
  readonly total: { readonly min: number; readonly max: number };
}

/** The value of a trait once its statements are resolved. */
export type Value<Path extends TraitPath> = {
  one: Said<Path>;
  figures: Figures<Said<Path>>;
  lengths: readonly AdultLength[];
  all: readonly Exclude<Said<Path>, "none">[];
}[TraitWay<Path>];

/** Resolved traits. */
export type Facts = InSections<{ [Path in TraitPath]: Fact<Value<Path>> }>;

/** A rule of law that names the species or its group. */
export interface Listing {
  /** Where it applies, in words. */
  readonly jurisdiction: string;
  /** Title and number of the instrument. */
  readonly instrument: string;
  /** The state of the text that was read. */
  readonly date: string;
  /** What the instrument does, in one sentence. */
  readonly effect: string;
  /** Whether the text was read or recalled. */
  readonly basis: "published" | "memory";
  /** Where the text was read. */
  readonly at?: string | undefined;
}

/** A form as a profile carries it. */
export type FormProfile = { readonly names: Names } & Facts;

/** What rules see of a species: one fact a trait. */
export type SpeciesProfile = {
  readonly id: string;
  readonly taxonomy: Taxonomy;
  readonly names: Names;
  readonly identifiers?: Identifiers | undefined;
  /** The essential traits that are unknown; verdicts on the species stay open. Absent from a complete profile. */
  readonly incomplete?: readonly TraitPath[] | undefined;
  /** The form whose traits are applied, if any. */
  readonly form?: string | undefined;
  readonly forms?: Readonly<Record<string, FormProfile>> | undefined;
  /** Laws that name it. */
  readonly listings?: readonly Listing[] | undefined;
} & Facts;
