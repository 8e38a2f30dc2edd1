import type { Animals, Condition } from "../../plan";
import type { PartialRange } from "../../ranges";
import type { Names } from "../../species";
import type { OpenQuestion } from "../engine/answers/questions";
import type { FindingOf } from "../engine/rule/finding";
import type { MeasureKinds, MeasuresOf } from "../engine/rule/measures";
import type { pairRules, planRules } from "../rules";
import type { conditionsExclude } from "../rules/conditions-exclude";
import type { ThresholdValues } from "../threshold-values";

/** Any rule of the library. */
type LibraryRule = (typeof pairRules | typeof planRules)[number] | typeof conditionsExclude;

/** The id of a rule of the library. */
export type RuleId = LibraryRule["id"];

/** The kinds of the measures of a rule of the library. */
type KindsOf<Id extends RuleId> =
  Extract<LibraryRule, { readonly id: Id }> extends {
    readonly measures?: infer Kinds;
  }
    ? Exclude<Kinds, undefined>
    : never;

/** The measures of the findings of each rule of the library. */
export type Measures = { readonly [Id in RuleId]: MeasuresOf<KindsOf<Id>> };

/** A reason of a verdict, by a rule of the library. */
export type LibraryFinding = { readonly [Id in RuleId]: FindingOf<Id, KindsOf<Id>> }[RuleId];

/** One reason of a verdict. Holds no prose: `vivary/report` puts it into words. Apps name their rules `x-…`. */
export type Finding = LibraryFinding | FindingOf<`x-${string}`, MeasureKinds>;

/**
 * The answer, the best first; `undetermined` where a trait is missing that is essential, or that a rule needs which could
 * rule it out, or where nobody can tell in advance what these individuals do.
 */
export type Outcome = "suitable" | "conditional" | "unsuitable" | "undetermined";

/** A party as a verdict names it. */
export interface VerdictParty
  extends Omit<Animals, "kind" | "family" | "order" | "kin" | "listings" | "some"> {
  /** The id that the plan gives the group. */
  readonly groupId?: string;
  /** The accepted scientific name. */
  readonly name: string;
  /** Vernacular names, of the form if one is applied. */
  readonly names: Names;
}

/** What must hold about one fact, joined over all findings that ask for it. */
export interface JointCondition extends Condition {
  /** What to aim at within what is wanted: what all are kept in, else its middle. */
  readonly aim?: PartialRange;
  /** The findings that ask for it, as indices into the verdict's `findings`. */
  readonly findings: readonly number[];
  /**
   * Those that no plan meets along with it, as indices into the verdict's `conditions`: to meet one is to lose the other.
   * Absent where there are none.
   */
  readonly excludes?: readonly number[];
}

/** A judgement of a pair or a plan. Plain data: it survives `JSON.parse(JSON.stringify(verdict))` unchanged. */
export interface Verdict {
  /** On the adopted facts. */
  readonly outcome: Outcome;
  /**
   * The outcomes between which the truth lies, over disputed and missing traits, what individuals do, and what animals may
   * weigh: of weights alone no question is open.
   */
  readonly bounds: {
    readonly atBest: Exclude<Outcome, "undetermined">;
    readonly atWorst: Exclude<Outcome, "undetermined">;
  };
  readonly parties: readonly VerdictParty[];
  /** What speaks against and for it. */
  readonly findings: readonly Finding[];
  /**
   * What would remove the restricting findings, joined over all that ask for it: one entry for each fact and party. There
   * are several only of food, `group.offerings`, of which one kind is given beside the other; and where no answer serves all
   * that ask: then these exclude each other. Where any exclude each other, and nothing else rules the plan out, a finding
   * `conditions-exclude` says so.
   */
  readonly conditions: readonly JointCondition[];
  /** Findings whose condition the plan meets: they do not count. */
  readonly met: readonly Finding[];
  /** What is not known, the most decisive first. */
  readonly open: readonly OpenQuestion[];
  /** What the answer was made with, so that it can be repeated. */
  readonly made: {
    /** Of the package. */
    readonly version: string;
    /**
     * The version of the data that came with it, as `vivary/evidence` names it. Whether the profiles are those of the catalog,
     * or resolved by options or made by the caller, it does not tell.
     */
    readonly data: string;
    /** The ids of the rules. */
    readonly rules: readonly string[];
    readonly thresholds: ThresholdValues;
  };
}
