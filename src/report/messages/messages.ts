import type { Weight } from "../../compatibility/finding";
import type { FactName } from "../../compatibility/plan-facts";
import type { RuleId } from "../../compatibility/rules";
import type { Outcome } from "../../compatibility/verdict";
import type { Basis, TraitPath } from "../../species";

/** What a sentence about a finding may use. Names and figures are ready to be printed. */
export interface Told {
  readonly weight: Weight;
  /** The party it starts from; empty for the tank. */
  readonly from: string;
  /** The party or parties it falls on; empty for the tank. */
  readonly to: string;
  /** A measure in the reader's units, or empty. */
  readonly measure: (name: string) => string;
  /** A class or number as it stands, or undefined. */
  readonly value: (name: string) => string | number | undefined;
}

/** What a sentence about a condition may use. */
export interface ToldCondition {
  /** The party it is about; empty for the tank. */
  readonly of: string;
  /** The range or class that must hold, in the reader's units. */
  readonly wanted: string;
  /** The upper end of the range, if it has one. */
  readonly most: number | undefined;
}

/** Everything a report says, in one language. */
export interface Messages {
  readonly outcome: Readonly<Record<Outcome, string>>;
  readonly bounds: (atBest: string, atWorst: string) => string;
  /** `besides` heads the conditions that would still stand if what blocks were solved. */
  readonly titles: Readonly<
    Record<
      | "parties"
      | "blocking"
      | "restricting"
      | "besides"
      | "advisory"
      | "favourable"
      | "met"
      | "open"
      | "cautions",
      string
    >
  >;
  /** A sentence for each rule; a rule of an app's own falls back on `otherRule`. */
  readonly rules: Readonly<Record<RuleId, (told: Told) => string>>;
  readonly otherRule: (id: string, told: Told) => string;
  readonly conditions: Readonly<Record<FactName, (told: ToldCondition) => string>>;
  readonly worksIf: (condition: string) => string;
  readonly basis: Readonly<Record<Basis, string>>;
  readonly traits: Readonly<Partial<Record<TraitPath, string>>>;
  readonly missing: (trait: string, of: string) => string;
  readonly disputed: (trait: string, of: string) => string;
  readonly notGiven: (input: FactName) => string;
  readonly outsideDomain: (of: string) => string;
  readonly couldBe: Readonly<Record<Weight, string>>;
  readonly metSummary: (count: number) => string;
  readonly sexes: (males: number, females: number) => string;
  /** `neon tetra, guppy and platy`. */
  readonly list: (names: readonly string[]) => string;
  readonly closing: string;
}
