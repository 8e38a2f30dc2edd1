import type { Endpoint, LengthMeaning, LengthMeasure, Sex, Stage, WaterMeaning } from "../traits/class-names";
import type { HasUnit, TraitWay } from "../traits/definitions";
import type { InSections, StatedValue, TraitPath } from "../traits/values";

/** What a statement of any trait may say beside its value. */
export interface StatementCore {
  /** A key of the record's `sources`, or `common-practice`, or `curator`. */
  readonly by: string;
  /** Where in the source, if it is not where the source entry points. */
  readonly at?: string | undefined;
  /** What a reader should know. A note without a value leaves the trait unknown. */
  readonly note?: string | undefined;
  /** Computed from relatives or by a model, not measured on this species. */
  readonly estimate?: true | undefined;
  /** Why this statement is the one to use. */
  readonly adopt?: string | undefined;
  /** Why this statement is not to be used. */
  readonly setAside?: string | undefined;
}

/** What a statement says further, by the way in which its trait resolves. */
export interface StatementTopics {
  readonly one: object;
  readonly all: object;
  readonly figures: {
    /** What the figure means. */
    readonly as?: WaterMeaning | undefined;
    /** The stage it holds for; grown animals if absent. */
    readonly stage?: Stage | undefined;
    /** The bounds are those of a handbook's class, such as soft water, not of this species. */
    readonly precision?: "class" | undefined;
    /** What ended the test of a `limit`, or what a `tested` figure was best for. */
    readonly endpoint?: Endpoint | undefined;
    /** The temperature that the tested animals were used to, °C. */
    readonly acclimatedAt?: number | undefined;
    /** The number of animals tested. */
    readonly n?: number | undefined;
  };
  readonly rooms: object;
  readonly ages: {
    /** What the age means. */
    readonly as?: LengthMeaning | undefined;
  };
  readonly lengths: {
    /** What the length means. */
    readonly as?: LengthMeaning | undefined;
    /** The sex it was measured on; both if absent. */
    readonly sex?: Sex | undefined;
    /** What was measured. */
    readonly measure?: LengthMeasure | undefined;
  };
}

/** What one source said of one trait. */
export type TraitStatement<Path extends TraitPath> = StatementCore &
  StatementTopics[TraitWay<Path>] &
  StatementUnit<Path> & {
    /** In the trait's own unit, or in that which the statement names. */
    readonly value?: StatedValue<Path> | undefined;
  };

/** A statement names a unit where its trait has one. */
export type StatementUnit<Path extends TraitPath> =
  HasUnit<Path> extends true
    ? {
        /** The source's unit where it is not the trait's own. */
        readonly unit?: string | undefined;
      }
    : object;

/** What a statement is about: one meaning, sex, stage, measure, and number of animals. */
export interface StatementTopic {
  /** What a figure of water or a length means. */
  readonly as?: WaterMeaning | LengthMeaning | undefined;
  readonly sex?: Sex | undefined;
  readonly stage?: Stage | undefined;
  /** What a length was measured as. */
  readonly measure?: LengthMeasure | undefined;
  /** The number of animals that a least room is stated for. */
  readonly for?: number | undefined;
}

/** A statement of any trait, with every field that one may have. */
export interface Statement<Value = unknown>
  extends StatementCore,
    Omit<StatementTopic, "for">,
    Omit<StatementTopics["figures"], "as"> {
  readonly value?: Value | undefined;
  /** The source's unit where it is not the trait's own. */
  readonly unit?: string | undefined;
}

/** The statements of a record or of a form. */
export type Statements = InSections<{ [Path in TraitPath]: readonly TraitStatement<Path>[] }>;
