import { objectOf, refusal } from "../errors";
import type { TraitPath, TraitValue as Value } from "../species";
import type { AssessedPlan } from "./assessed-plan";
import type { Judged, Weight } from "./finding";
import type { AssessedParty } from "./party";
import type { Stock } from "./stock";
import type { ThresholdName, ThresholdValues } from "./thresholds";

/** Traits as a rule sees them, by path, beside the party they belong to. */
export type Seen<Needed extends TraitPath, Used extends TraitPath> = {
  readonly party: AssessedParty;
} & { readonly [Path in Needed]: Value<Path> } & { readonly [Path in Used]?: Value<Path> };

/** The traits that a rule reads of each side. */
export interface Sides<From extends TraitPath, To extends TraitPath> {
  readonly from: readonly From[];
  readonly to: readonly To[];
}

interface Described<Id extends string, Yield extends Weight> {
  readonly id: Id;
  /** The question it answers, as a keeper asks it. */
  readonly question: string;
  /** The thresholds it decides by. */
  readonly decidesBy?: readonly ThresholdName[];
  /** The weights its findings may have. */
  readonly mayYield: readonly Yield[];
}

interface Weighing {
  /**
   * It reads `stock`, the fish by mass: it is judged for what they likely weigh, the least and the greatest, and stays
   * open while the length of some group is unknown. What it finds must not lessen as they grow heavier.
   */
  readonly weighs?: boolean;
}

/** A rule about two parties. */
export interface PairRule<
  Id extends string = string,
  From extends TraitPath = TraitPath,
  To extends TraitPath = TraitPath,
  UsedFrom extends TraitPath = TraitPath,
  UsedTo extends TraitPath = TraitPath,
  Yield extends Weight = Weight,
> extends Described<Id, Yield> {
  /** `mutual`: one judgement of both; `each-way`: judged from a to b and from b to a. */
  readonly way: "mutual" | "each-way";
  /** Traits without which it cannot judge: one that nobody knows leaves the rule open where it is read. */
  readonly needs: Sides<From, To>;
  /** Traits that may be absent; absence judges at least as severely as every value. */
  readonly uses?: Sides<UsedFrom, UsedTo>;
  /** The findings about the two, none if there is nothing to say. */
  judge(seen: {
    readonly from: Seen<From, UsedFrom>;
    readonly to: Seen<To, UsedTo>;
    readonly thresholds: ThresholdValues;
  }): readonly Judged<NoInfer<Yield>>[];
}

/** A rule about one group in a plan. */
export interface GroupRule<
  Id extends string = string,
  From extends TraitPath = TraitPath,
  UsedFrom extends TraitPath = TraitPath,
  Yield extends Weight = Weight,
> extends Described<Id, Yield>,
    Weighing {
  readonly way: "each-group";
  readonly needs: { readonly from: readonly From[] };
  readonly uses?: { readonly from: readonly UsedFrom[] };
  /** The findings about the group, none if there is nothing to say. */
  judge(seen: {
    readonly from: Seen<From, UsedFrom>;
    readonly plan: AssessedPlan;
    /** Empty unless the rule `weighs`. */
    readonly stock: Stock;
    readonly thresholds: ThresholdValues;
  }): readonly Judged<NoInfer<Yield>>[];
}

/** A rule about all groups of a plan together. Groups of which a needed trait is unknown are left out, and open. */
export interface StockRule<
  Id extends string = string,
  From extends TraitPath = TraitPath,
  UsedFrom extends TraitPath = TraitPath,
  Yield extends Weight = Weight,
> extends Described<Id, Yield> {
  readonly way: "all-groups";
  readonly needs: { readonly from: readonly From[] };
  readonly uses?: { readonly from: readonly UsedFrom[] };
  /** The findings about the groups, each with the one it is about, an index into `groups`. */
  judge(seen: {
    readonly groups: readonly Seen<From, UsedFrom>[];
    readonly plan: AssessedPlan;
    readonly thresholds: ThresholdValues;
  }): readonly (Judged<NoInfer<Yield>> & { readonly about: number })[];
}

/** A rule about a plan as a whole. */
export interface TankRule<Id extends string = string, Yield extends Weight = Weight>
  extends Described<Id, Yield>,
    Weighing {
  readonly way: "once";
  /** The findings about the plan, none if there is nothing to say. */
  judge(seen: {
    readonly plan: AssessedPlan;
    /** Empty unless the rule `weighs`. */
    readonly stock: Stock;
    readonly thresholds: ThresholdValues;
  }): readonly Judged<NoInfer<Yield>>[];
}

/** A rule about a plan: about each of its groups, all of them together, or the whole. */
export type PlanRule = GroupRule | StockRule | TankRule;
/** Any rule. */
export type Rule = PairRule | PlanRule;

/** Whether a rule is about two parties. */
export const isPairRule = (rule: Rule): rule is PairRule => rule.way === "mutual" || rule.way === "each-way";

/**
 * A rule, with the types of what its `judge` sees taken from what it says it needs and uses: a trait that is not
 * declared, a path that does not exist, a weight not in `mayYield` or a restricting finding without a condition
 * does not compile. Apps name theirs `x-…`.
 *
 * @example
 * ```ts
 * import { assessPair, defineRule, pairRules } from "vivary/compatibility";
 * import { danioRerio, tanichthysAlbonubes } from "vivary/catalog";
 *
 * const sameOrder = defineRule({
 *   id: "x-same-family",
 *   question: "Are both of one family?",
 *   way: "mutual",
 *   needs: { from: [], to: [] },
 *   mayYield: ["advisory"],
 *   judge: ({ from, to }) =>
 *     from.party.species.taxonomy.family === to.party.species.taxonomy.family ? [{ weight: "advisory" }] : [],
 * });
 * const options = { rules: [...pairRules, sameOrder] };
 * assessPair({ species: danioRerio }, { species: tanichthysAlbonubes }, options).made.rules.at(-1); // => "x-same-family"
 * ```
 */
export function defineRule<
  const Id extends string,
  const From extends TraitPath,
  const Yield extends Weight,
  const UsedFrom extends TraitPath = never,
>(rule: GroupRule<Id, From, UsedFrom, Yield>): GroupRule<Id, From, UsedFrom, Yield>;
export function defineRule<
  const Id extends string,
  const From extends TraitPath,
  const Yield extends Weight,
  const UsedFrom extends TraitPath = never,
>(rule: StockRule<Id, From, UsedFrom, Yield>): StockRule<Id, From, UsedFrom, Yield>;
export function defineRule<const Id extends string, const Yield extends Weight>(
  rule: TankRule<Id, Yield>,
): TankRule<Id, Yield>;
export function defineRule<
  const Id extends string,
  const From extends TraitPath,
  const To extends TraitPath,
  const Yield extends Weight,
  const UsedFrom extends TraitPath = never,
  const UsedTo extends TraitPath = never,
>(rule: PairRule<Id, From, To, UsedFrom, UsedTo, Yield>): PairRule<Id, From, To, UsedFrom, UsedTo, Yield>;
export function defineRule(rule: Rule): Rule {
  return rule;
}

/** The rules themselves, or an {@link InvalidInputError} where they are no list of rules. */
export function checkedRules<Given extends Rule>(rules: readonly Given[]): readonly Given[] {
  if (!Array.isArray(rules)) throw refusal("rules", "a list of rules", rules);
  for (const [index, rule] of rules.entries()) {
    const { id, judge, way } = objectOf(rule, `rules[${index}]`);
    const made = typeof id === "string" && typeof judge === "function" && typeof way === "string";
    if (!made) throw refusal(`rules[${index}]`, "a rule made with defineRule", rule);
  }
  return rules;
}
