import { InvalidInputError, type Problem } from "../../../errors";
import type { PlanReadings } from "../../../plan/inner";
import type { ThresholdName } from "../../threshold-values";
import type { MeasureKinds } from "./measures";
import type { RuleWay, SideTraits, TypedRule } from "./rule";
import { ruleProblems } from "./rule-problems";
import { asSound } from "./sound-rule";
import type { Weight } from "./weight";

/**
 * A rule. What its `judge` sees has the types of what it declares: a trait, a fact of the plan or a threshold that is
 * not declared, a path that does not exist, a measure without a declared unit, a weight not in `mayYield` or a
 * restricting finding without a condition does not compile. It cannot be changed any more. Apps name theirs `x-…`.
 * Assessments take rules made by it and the library's own, and no others.
 *
 * @throws InvalidInputError for a rule that is not complete, with everything that is wrong with it.
 *
 * @example
 * ```ts
 * import { assessPair, defineRule, pairRules } from "vivary/compatibility";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
 *
 * const sameOrigin = defineRule({
 *   id: "x-same-origin",
 *   way: "mutual",
 *   needs: { from: ["origin.regions"], to: ["origin.regions"] },
 *   mayYield: ["favourable"],
 *   judge: ({ from, to }) =>
 *     from["origin.regions"].some((region) => to["origin.regions"].includes(region))
 *       ? [{ weight: "favourable" }]
 *       : [],
 * });
 * const options = { rules: [...pairRules, sameOrigin] };
 * assessPair({ species: danioRerio }, { species: tanichthysAlbonubes }, options).made.rules.at(-1); // => "x-same-origin"
 * ```
 */
export function defineRule<
  const Id extends string,
  const Way extends RuleWay,
  const Yield extends Weight,
  const Needs extends SideTraits = Record<never, never>,
  const Uses extends SideTraits = Record<never, never>,
  const Tells extends SideTraits = Record<never, never>,
  const Reads extends keyof PlanReadings = never,
  const DecidesBy extends ThresholdName = never,
  const Kinds extends MeasureKinds = Record<never, never>,
>(
  rule: TypedRule<Id, Way, Yield, Needs, Uses, Tells, Reads, DecidesBy, Kinds>,
): TypedRule<Id, Way, Yield, Needs, Uses, Tells, Reads, DecidesBy, Kinds> {
  const problems = [...ruleProblems(rule, ["rule"]), ...foreignProblems(rule)];
  if (problems.length > 0) throw new InvalidInputError(problems);
  return asSound(rule);
}

/** An app's rule does not pass for one of the library's. */
function foreignProblems(rule: unknown): readonly Problem[] {
  const { id } = Object(rule);
  if (typeof id !== "string" || id.startsWith("x-")) return [];
  return [{ path: ["rule", "id"], code: "word", expected: "an id that begins with x-", found: id }];
}
