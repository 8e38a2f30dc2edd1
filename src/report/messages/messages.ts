import type {
  FindingMeasure,
  Measures,
  Outcome,
  Quantity,
  RuleId,
  Sign,
  Weight,
  WordKind,
  Words,
} from "../../compatibility";
import type { FactName, Numbers } from "../../plan";
import type { Basis, Section, TraitPath, TraitValue } from "../../species";
import type { ShownUnit } from "../shown-unit";

/** What a sentence about a finding of a rule may use. Names are ready to be printed. */
export interface Told<MeasuresOfRule> {
  readonly weight: Weight;
  /** The party or parties it starts from; empty for the tank. */
  readonly from: string;
  /** The party or parties it falls on; empty for the tank. */
  readonly to: string;
  /** The figures and words that the rule declares; each may be absent. */
  readonly measures: MeasuresOfRule;
  /** A figure in the reader's units and language, such as `24 °C` or `at least 8`; empty where there is none. */
  readonly figure: (quantity: Quantity | undefined) => string;
}

/** What a sentence about a condition may use. */
export interface ToldCondition {
  /** The party it is about; empty for the tank. */
  readonly of: string;
  /** The range that must hold, in the reader's units and language; empty for words. */
  readonly wanted: string;
  /** The words any of which will do, in their order. */
  readonly words: readonly (string | boolean)[];
  /** The ends of the range, in the fact's own unit. */
  readonly min: number | undefined;
  readonly max: number | undefined;
  /** A figure in the reader's units and language, without the unit where it has none. */
  readonly figure: (quantity: Quantity | undefined) => string;
}

/** A party as a report lists it. */
export interface ToldParty extends Numbers {
  /** What it is called. */
  readonly name: string;
  /** The accepted scientific name. */
  readonly scientific: string;
  readonly sex?: "male" | "female";
  readonly stage?: Words["stage"];
}

/** One value of a trait, or one of a list. */
export type TraitItem<Path extends TraitPath> =
  TraitValue<Path> extends readonly (infer One)[] ? One : TraitValue<Path>;

/** A sentence for a finding of each rule. */
export type RuleSentences = { readonly [Id in RuleId]: (told: Told<Measures[Id]>) => string };

/** What each word is called, by kind. */
export type SpelledWords = { readonly [Kind in WordKind]: Readonly<Record<Words[Kind], string>> };

/** A value of each trait that has parts, in words; `size` writes its figures. */
export type ValueSentences = {
  readonly [Path in TraitPath]?: (value: TraitItem<Path>, size: (number: number) => string) => string;
};

/** Everything a report says, in one language. */
export interface Messages {
  /** The language as a BCP 47 tag: names of species are taken in it, numbers and lists are written as it has them. */
  readonly language: string;
  readonly outcome: Readonly<Record<Outcome, string>>;
  /** The sentence that names the best and the worst outcome. */
  readonly bounds: (atBest: Outcome, atWorst: Outcome) => string;
  /** `besides` heads the conditions that would still stand if what blocks were solved. */
  readonly titles: Readonly<
    Record<
      | "parties"
      | "blocking"
      | "restricting"
      | "besides"
      | "advisory"
      | "favourable"
      | "watchFor"
      | "met"
      | "open"
      | "cautions",
      string
    >
  >;
  /** A party of the verdict, with its numbers. */
  readonly party: (party: ToldParty) => string;
  /** A sentence for each rule; a rule of an app's own falls back on `otherRule`. */
  readonly rules: RuleSentences;
  /**
   * A sentence for what speaks for each two of some parties by one rule; findings of a rule that has none are told one
   * by one.
   */
  readonly together: Readonly<Partial<Record<RuleId, (who: string) => string>>>;
  /** The sentence for a rule of an app's own. */
  readonly otherRule: (id: string, told: Told<Readonly<Record<string, FindingMeasure>>>) => string;
  /** A sign to look for, and in whom. */
  readonly signs: Readonly<Record<Sign, (whom: string) => string>>;
  /** What must hold, for each fact of a plan, as a clause. */
  readonly conditions: Readonly<Record<FactName, (told: ToldCondition) => string>>;
  /** Makes a sentence of such a clause. */
  readonly worksIf: (condition: string) => string;
  readonly basis: Readonly<Record<Basis, string>>;
  /** What a reason rests on, beside it; empty where it need not be said. */
  readonly support: (basis: Basis) => string;
  readonly traits: Readonly<Record<TraitPath, string>>;
  /** Questions that are open, each with what it could bring. */
  readonly open: {
    /** Nobody knows the trait. */
    readonly missing: (trait: string, of: string) => string;
    /** Sources differ on the trait. */
    readonly disputed: (trait: string, of: string) => string;
    /** The plan does not state the fact. */
    readonly notGiven: (input: FactName, of: string) => string;
    /** An equation does not hold. */
    readonly outsideDomain: (of: string) => string;
    /** Nobody can tell in advance what these individuals do. */
    readonly individual: (of: string) => string;
    /** Such a question, with the gravest that its answer could bring, as a sentence. */
    readonly couldBe: (question: string, weight: Weight) => string;
    /** How many less decisive questions there are. */
    readonly further: (count: number) => string;
  };
  /** How many requirements the plan meets. */
  readonly metSummary: (count: number) => string;
  readonly closing: string;
  /** Figures with one end or two, each end already written; `unit` is empty or begins with a space. */
  readonly ranges: {
    /** `at least 60 cm`. */
    readonly atLeast: (min: string, unit: string) => string;
    /** `at most 60 cm`. */
    readonly atMost: (max: string, unit: string) => string;
    /** `60 to 80 cm`. */
    readonly between: (min: string, max: string, unit: string) => string;
  };
  /** Symbols and names of units. */
  readonly units: Readonly<Record<ShownUnit, string>>;
  /** The words that traits are answered with. */
  readonly words: SpelledWords;
  /** The page of a profile. */
  readonly profile: {
    readonly columns: readonly [trait: string, value: string, alsoSaid: string, support: string];
    readonly sections: Readonly<Record<Section, string>>;
    readonly yes: string;
    readonly no: string;
    readonly none: string;
    /** One figure of water with what it means; a meaning that is absent is the span it is kept in. */
    readonly figure: (span: string, meaning: Words["waterMeaning"] | undefined) => string;
    /** An adult length with what was measured, on whom, and what it means. */
    readonly length: (size: string, of: Omit<TraitItem<"size.adultLength">, "length" | "total">) => string;
    /** The traits whose values have parts. */
    readonly values: ValueSentences;
  };
}
