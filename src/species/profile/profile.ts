import type { Basis } from "../record/basis";
import type { Identifiers, Names, Taxonomy } from "../record/record";
import type { LengthMeaning, LengthMeasure, Sex, WaterMeaning } from "../traits/class-names";
import type { TraitWay } from "../traits/definitions";
import type { InSections, StatedValue, TraitPath } from "../traits/values";

/** One resolved trait. */
export interface Fact<Value> {
  readonly value: Value;
  /** The weakest basis of what the value rests on; `derived` where it was computed or stands in. */
  readonly basis: Basis;
  /** The keys of the sources it comes from. Profiles of the catalog, which ship no sources, leave it out. */
  readonly said?: readonly string[] | undefined;
  /** Whole other values that a source supports. */
  readonly also?: readonly Value[] | undefined;
}

/** Figures of one trait by meaning. */
export type Figures<Value> = {
  /** The span to keep it in. */
  readonly kept: Value;
  /** Set where no source states `kept` and the optimum stands in for it. */
  readonly standIn?: true | undefined;
  /** The ends of `kept` that are bounds of a handbook's class, such as soft water, rather than of this species. */
  readonly precision?: { readonly min?: "class" | undefined; readonly max?: "class" | undefined } | undefined;
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
export type TraitValue<Path extends TraitPath> = {
  one: StatedValue<Path>;
  figures: Figures<StatedValue<Path>>;
  lengths: readonly AdultLength[];
  /** That for the fewest animals first. */
  rooms: readonly StatedValue<Path>[];
  ages: { readonly [Meaning in LengthMeaning]?: StatedValue<Path> | undefined };
  all: readonly Exclude<StatedValue<Path>, "none">[];
}[TraitWay<Path>];

/** Resolved traits. */
export type Facts = InSections<{ [Path in TraitPath]: Fact<TraitValue<Path>> }>;

/** A rule of law that names the species or its group. */
export interface Listing {
  /** The lawgiver's id, by which a plan names it: `eu`, `us-florida`. */
  readonly code: string;
  /** Ids of the lawgivers in whose countries it applies as well: of the `eu`, those of its members. */
  readonly also?: readonly string[] | undefined;
  /** Where it applies, in words. */
  readonly jurisdiction: string;
  /** Title and number of the instrument. */
  readonly instrument: string;
  /**
   * When the act was adopted or the report published, in the version that was read: of an act changed since, when that
   * change was. A day, or a month or a year where no day is known; `undated` where the text shows none. `at` says where
   * another date stands for want of it.
   */
  readonly date: string;
  /** What the instrument does, in one sentence. */
  readonly effect: string;
  /** Whether the text was read or recalled. */
  readonly basis: "published" | "memory";
  /** Where the text was read. */
  readonly at?: string | undefined;
}

/** A form as a profile carries it. */
export type FormProfile = {
  readonly names: Names;
  /** Ids it once bore. */
  readonly once?: readonly string[] | undefined;
  /** Laws that name the form alone, beside those that name the species. */
  readonly listings?: readonly Listing[] | undefined;
} & Facts;

/** What rules see of a species: one fact a trait. */
export type SpeciesProfile = {
  /** The accepted name in lower case, words joined by hyphens. */
  readonly id: string;
  readonly taxonomy: Taxonomy;
  /** What the animal is called: with a form applied the form's names, else and in other languages the species'. */
  readonly names: Names;
  readonly identifiers?: Identifiers | undefined;
  /** The essential traits that are unknown; verdicts on the species stay open. Absent from a complete profile. */
  readonly incomplete?: readonly TraitPath[] | undefined;
  /** The form whose traits are applied, if any. */
  readonly form?: string | undefined;
  readonly forms?: Readonly<Record<string, FormProfile>> | undefined;
  /** Laws that name it; with a form applied those that name the form as well. */
  readonly listings?: readonly Listing[] | undefined;
} & Facts;
