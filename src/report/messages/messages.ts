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
  /** The classes any of which will do, in their order. */
  readonly choices: readonly string[];
  /** The upper end of the range, if it has one. */
  readonly most: number | undefined;
}

/** Everything a report says, in one language. */
export interface Messages {
  readonly outcome: Readonly<Record<Outcome, string>>;
  /** The sentence that names the best and the worst outcome. */
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
  /** The sentence for a rule of an app's own. */
  readonly otherRule: (id: string, told: Told) => string;
  /** What must hold, for each fact of a plan, as a clause. */
  readonly conditions: Readonly<Record<FactName, (told: ToldCondition) => string>>;
  /** Makes a sentence of such a clause. */
  readonly worksIf: (condition: string) => string;
  readonly basis: Readonly<Record<Basis, string>>;
  readonly traits: Readonly<Partial<Record<TraitPath, string>>>;
  /** A trait that is not known. */
  readonly missing: (trait: string, of: string) => string;
  /** A trait on which sources differ. */
  readonly disputed: (trait: string, of: string) => string;
  /** A fact the plan does not state. */
  readonly notGiven: (input: FactName) => string;
  /** An equation that does not hold for this water. */
  readonly outsideDomain: (of: string) => string;
  readonly couldBe: Readonly<Record<Weight, string>>;
  /** How many less decisive questions are open. */
  readonly furtherOpen: (count: number) => string;
  /** How many requirements the plan meets. */
  readonly metSummary: (count: number) => string;
  /** The numbers of males and females of a group. */
  readonly sexes: (males: number, females: number) => string;
  /** `neon tetra, guppy and platy`. */
  readonly list: (names: readonly string[]) => string;
  readonly closing: string;
}
