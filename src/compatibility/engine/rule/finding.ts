import type { Condition, FactName, Wanted } from "../../../plan";
import type { PartialRange } from "../../../ranges";
import type { Basis, TraitPath } from "../../../species";
import type { GivenMeasures, MeasureKinds, MeasuresOf } from "./measures";
import type { Weight } from "./weight";

/** A sign by which a keeper notices in time that it does not work. */
export type Sign =
  | "torn-fins"
  | "damaged-skin"
  | "hiding"
  | "missing-animals"
  | "thin"
  | "chasing"
  | "gasping"
  | "missing-young";

/** One of the two parties that a rule sees. */
export type PartyRole = "from" | "to";

/** A condition as a rule gives it: about one of the parties it sees, its numbers in the fact's unit. */
export interface GivenCondition {
  readonly on: FactName;
  readonly of?: PartyRole;
  readonly wanted: Wanted;
  /** What to aim at within a span that is wanted. */
  readonly aim?: PartialRange | undefined;
}

/** What a rule answers; the engine adds whom it concerns, the units, and how well it is supported. */
export type Judged<Allowed extends Weight = Weight, Kinds = MeasureKinds> = {
  /** The figures behind it, by name. */
  readonly measures?: GivenMeasures<Kinds>;
  /** What to look for. */
  readonly watchFor?: Sign;
} & {
  blocking: {
    readonly weight: "blocking";
    /** A form that would not be harmed, in place of the one planned. */
    readonly instead?: GivenCondition | undefined;
  };
  restricting: { readonly weight: "restricting"; readonly condition: GivenCondition };
  advisory: {
    readonly weight: "advisory";
    /** Nobody can tell in advance whether this individual does so: then it rules the plan out. */
    readonly couldBe?: "blocking" | undefined;
  };
  favourable: { readonly weight: "favourable" };
}[Allowed];

/** One reason of a verdict, by a rule with this id and these measures. Holds no prose. */
export type FindingOf<Id extends string, Kinds> = {
  /** The id of the rule. */
  readonly rule: Id;
  /** The party it starts from, an index into the verdict's `parties`; absent: the tank as a whole. */
  readonly from?: number;
  /** The party it falls on; absent: the tank. */
  readonly to?: number;
  /** The figures behind it, by name. */
  readonly measures?: MeasuresOf<Kinds>;
  /** What to look for. */
  readonly watchFor?: Sign;
  /** The weakest basis of the facts used; `common-practice` where a rule uses none. */
  readonly basis: Basis;
  /** The traits used. */
  readonly traits: readonly TraitPath[];
} & (
  | { readonly weight: "favourable" }
  | {
      readonly weight: "blocking";
      /** A form that would not be harmed, in place of the one planned: told, and never among `conditions`. */
      readonly instead?: Condition;
    }
  | {
      readonly weight: "advisory";
      /** Nobody can tell in advance whether these individuals do so: then it rules the plan out. */
      readonly couldBe?: "blocking";
    }
  /** Falls away where the condition is met. */
  | { readonly weight: "restricting"; readonly condition: AimedCondition }
);

/** A condition, with what to aim at within a span that is wanted. */
export interface AimedCondition extends Condition {
  readonly aim?: PartialRange;
}

/** A finding of any rule. */
export type AnyFinding = FindingOf<string, MeasureKinds>;
