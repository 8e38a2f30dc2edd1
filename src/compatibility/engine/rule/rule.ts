import type { Animals } from "../../../plan";
import type { PlanReadings } from "../../../plan/inner";
import type { TraitPath, TraitValue } from "../../../species";
import type { Crowd } from "../../animals/crowd";
import type { Stock } from "../../animals/stock";
import type { Summing } from "../../animals/summing";
import type { ThresholdName, ThresholdValues } from "../../threshold-values";
import type { GivenCondition, Judged } from "./finding";
import type { MeasureKinds } from "./measures";
import type { Weight } from "./weight";

/**
 * Whom a rule judges. `mutual`: each two parties, both at once; `each-way`: from one to the other and back;
 * `each-group`: each group of a plan; `all-groups`: all of them together; `once`: the plan as a whole.
 */
export type RuleWay = "mutual" | "each-way" | "each-group" | "all-groups" | "once";

/** The traits that a rule reads of each side; of a group, or of each of all groups, as `from`. */
export interface SideTraits {
  readonly from?: readonly TraitPath[];
  readonly to?: readonly TraitPath[];
}

/** What a rule says of itself. */
export interface RuleDeclaration<
  Id extends string = string,
  Way extends RuleWay = RuleWay,
  Yield extends Weight = Weight,
  Needs extends SideTraits = SideTraits,
  Uses extends SideTraits = SideTraits,
  Tells extends SideTraits = SideTraits,
  Reads extends keyof PlanReadings = keyof PlanReadings,
  DecidesBy extends ThresholdName = ThresholdName,
  Kinds extends MeasureKinds = MeasureKinds,
> {
  /** Unique. Apps name theirs `x-…`. */
  readonly id: Id;
  readonly way: Way;
  /** Of which pairs it is asked: of parties of one species alone, or of two; of any where absent. */
  readonly between?: "one-species" | "two-species";
  /** Traits without which it cannot judge: one that nobody knows leaves the rule open where it is read. */
  readonly needs?: Needs;
  /** Traits that may be absent; absence judges at least as severely as every value. */
  readonly uses?: Uses;
  /**
   * Of the traits it uses or sums up by, those of which a value may ask for more than absence does; never for less, unless
   * `mayRestrict` lists them too.
   */
  readonly mayAdd?: readonly TraitPath[];
  /** Of the traits it uses, those of which a value may restrict to something else than absence does. */
  readonly mayRestrict?: readonly TraitPath[];
  /** Traits that may be absent and change no weight: they only tell more, by the adopted values whatever sources differ on. */
  readonly tells?: Tells;
  /** What it reads of the plan as a whole; each may be unknown. */
  readonly reads?: readonly Reads[];
  /** The thresholds it decides by. */
  readonly decidesBy?: readonly DecidesBy[];
  /** The weights its findings may have. */
  readonly mayYield: readonly Yield[];
  /** Its measures, each with its unit or its kind of words. */
  readonly measures?: Kinds;
  /**
   * How a rule of plans sums up all groups. By `weighing` it reads `stock`, the fish by mass, and stays open while the length
   * of some group is unknown; by `counting` it reads `crowd`, how many there will be of each species. It is judged for the
   * sum that is likely, the least and the greatest; what it finds must not lessen as that grows.
   */
  readonly sums?: Summing<"stock", Stock> | Summing<"crowd", Crowd>;
}

type Listed<Traits, Role extends string> = Traits extends { readonly [R in Role]?: infer Paths }
  ? Paths extends readonly (infer Path extends TraitPath)[]
    ? Path
    : never
  : never;

/** A party as a rule sees it: its animals, and by path the traits that the rule needs, and those that may be absent. */
export type SeenParty<Needed extends TraitPath, Optional extends TraitPath> = {
  readonly party: Animals;
} & { readonly [Path in Needed]: TraitValue<Path> } & { readonly [Path in Optional]?: TraitValue<Path> };

/** One side of a rule, with what it declares of it. */
export type SeenSide<Needs, Uses, Tells, Role extends string> = SeenParty<
  Listed<Needs, Role>,
  Listed<Uses, Role> | Listed<Tells, Role>
>;

/** The thresholds that a rule decides by. */
export type SeenThresholds<DecidesBy> = { readonly [Name in Extract<DecidesBy, ThresholdName>]: number };

/** What a rule sees: what it declared, and nothing else. */
export type Seen<Way, Needs, Uses, Tells, Reads, DecidesBy> = {
  readonly thresholds: SeenThresholds<DecidesBy>;
} & {
  mutual: {
    readonly from: SeenSide<Needs, Uses, Tells, "from">;
    readonly to: SeenSide<Needs, Uses, Tells, "to">;
  };
  "each-way": {
    readonly from: SeenSide<Needs, Uses, Tells, "from">;
    readonly to: SeenSide<Needs, Uses, Tells, "to">;
  };
  "each-group": PlanSeen<Reads> & { readonly from: SeenSide<Needs, Uses, Tells, "from"> };
  "all-groups": PlanSeen<Reads> & { readonly groups: readonly SeenSide<Needs, Uses, Tells, "from">[] };
  once: PlanSeen<Reads>;
}[Extract<Way, RuleWay>];

/** What a rule about a plan sees beside its groups. */
export interface PlanSeen<Reads> {
  /** What the rule reads of the plan, by name. */
  readonly plan: { readonly [Name in Extract<Reads, keyof PlanReadings>]: PlanReadings[Name] };
  /** Empty unless the rule sums up by `weighing`. */
  readonly stock: Stock;
  /** Of nobody unless the rule sums up by `counting`. */
  readonly crowd: Crowd;
}

/** What a rule answers of what it sees: its findings, none if there is nothing to say, or that it cannot tell. */
export type RuleAnswer<Way, Yield extends Weight, Kinds> =
  | readonly (Judged<Yield, Kinds> & About<Way>)[]
  | "unknown";

/** Which of all groups a finding is about, an index into those seen. */
type About<Way> = Way extends "all-groups" ? { readonly about: number } : unknown;

/** A rule whose types are known. */
export type TypedRule<
  Id extends string,
  Way extends RuleWay,
  Yield extends Weight,
  Needs extends SideTraits,
  Uses extends SideTraits,
  Tells extends SideTraits,
  Reads extends keyof PlanReadings,
  DecidesBy extends ThresholdName,
  Kinds extends MeasureKinds,
> = RuleDeclaration<Id, Way, Yield, Needs, Uses, Tells, Reads, DecidesBy, Kinds> & {
  /** The findings about what it sees. */
  judge(seen: Seen<Way, Needs, Uses, Tells, Reads, DecidesBy>): RuleAnswer<Way, Yield, Kinds>;
  /**
   * The utmost that it may ask for where a trait is not known: conditions at their ends, about facts of which one
   * condition may exclude another. A rule that may block need not say.
   */
  mayAsk?(thresholds: SeenThresholds<DecidesBy>): readonly GivenCondition[];
};

/** Any rule, as the engine runs it. */
export interface Rule extends RuleDeclaration {
  /** The findings about what it sees. */
  judge(seen: never): RuleAnswer<RuleWay, Weight, MeasureKinds>;
  /** The utmost that it may ask for where a trait is not known. */
  mayAsk?(thresholds: never): readonly GivenCondition[];
}

/** A rule about two parties. */
export type PairRule = Rule & { readonly way: "mutual" | "each-way" };
/** A rule about a plan: about each of its groups, all of them together, or the whole. */
export type PlanRule = Rule & { readonly way: "each-group" | "all-groups" | "once" };

/** Whether a rule is about two parties. */
export const isPairRule = (rule: Rule): rule is PairRule => rule.way === "mutual" || rule.way === "each-way";

/** The rules and numbers that an assessment is made with. */
export interface AssessWith<Judging extends Rule = Rule> {
  readonly rules: readonly Judging[];
  readonly thresholds: ThresholdValues;
}
