import { refusal } from "../errors";
import type { Plan } from "../plan";
import { checkedPlan } from "../plan/inner";
import { type AssessOptions, assessWith } from "./assess-options";
import { pairJudge } from "./engine/judge-pair";
import { judgePlan } from "./engine/judge-plan";
import { isPairRule, type PlanRule, type Rule } from "./engine/rule/rule";
import { type Subject, subjectOf } from "./engine/subject";
import { pairRules, planRules } from "./rules";
import type { Verdict } from "./verdict";
import { verdictOf } from "./verdict-of";

/**
 * Whether a tank, its water and its animals go together: every plan rule, every pair rule on each two groups, and
 * those that are judged each way on each group with itself, unless it is of one animal that lives alone. A finding whose
 * condition the plan meets moves to `met`; what the plan does not say is `open`. Advice about typical animals; individuals
 * vary.
 *
 * @throws InvalidInputError with everything that is wrong with the plan: no tank or no group, more than 100 groups, a
 * size or count that cannot be, an unknown form, water that no aquarium holds, a key that nothing reads.
 *
 * @example
 * ```ts
 * import { assessPlan } from "vivary/compatibility";
 * import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
 *
 * const verdict = assessPlan({
 *   tank: {
 *     base: { shape: "rectangle", length: 80, width: 35 },
 *     height: 40,
 *     lid: true,
 *     cover: 0.3,
 *     flow: { calmest: "still", strongest: "moderate" },
 *     filter: { mediaArea: 1.5, age: 90 },
 *   },
 *   water: { temperature: 19, pH: 7, generalHardness: 10 },
 *   groups: [{ species: tanichthysAlbonubes, unsexed: 10 }],
 * });
 * verdict.outcome; // => "suitable"
 * ```
 */
export function assessPlan(plan: Plan, options: AssessOptions = {}): Verdict {
  const { rules, thresholds } = assessWith(options, allRules);
  if (rules.length === 0) throw refusal("rules", "at least one rule", 0);
  const checked = checkedPlan(plan);
  const subjects = checked.parties.map(subjectOf);
  const given = { plan: checked, subjects };
  const judgements = rules.flatMap((rule) => {
    if (!isPairRule(rule)) return judgePlan(rule as PlanRule, given, thresholds);
    const judge = pairJudge(rule, thresholds, given);
    return encounters(subjects, rule.way).map(([from, to]) => judge(from, to));
  });
  return verdictOf(subjects, judgements, { rules, thresholds });
}

const allRules: readonly Rule[] = /* @__PURE__ */ rulesOf(planRules, pairRules);

/** All rules, those about plans first. A call that bundlers can leave out where nobody judges plans. */
function rulesOf(ofPlans: readonly Rule[], ofPairs: readonly Rule[]): readonly Rule[] {
  return Object.freeze([...ofPlans, ...ofPairs]);
}

/** Who meets whom: every two groups, once or each way, and each way also a group with itself, unless it is one and stays so. */
function encounters(
  subjects: readonly Subject[],
  way: "mutual" | "each-way",
): readonly (readonly [Subject, Subject])[] {
  return subjects.flatMap((from) =>
    subjects
      .filter((to) => (way === "mutual" ? from.index < to.index : from !== to || mayBeSeveral(from)))
      .map((to) => [from, to] as const),
  );
}

/** Whether there are several of a group, or it is one of a kind that is not known to live alone: more may be asked for. */
function mayBeSeveral({ animals, standing }: Subject): boolean {
  if (animals.kin.count !== 1) return (animals.count ?? 1) > 1;
  const living = standing("social.living");
  return living.length === 0 || living.some((way) => way !== "alone");
}
