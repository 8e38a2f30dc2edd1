import {
  assessPair,
  assessPlan,
  type Finding,
  type Rule,
  type RuleId,
  type ThresholdValues,
  type Verdict,
} from "../../src/compatibility";
import type { Group, Party, Plan, PlannedTank, PlannedWater } from "../../src/plan";

/** What a test changes of a plan that is roomy and says nothing it need not say. */
export interface Changes {
  readonly tank?: Partial<PlannedTank>;
  readonly water?: Partial<PlannedWater>;
}

/** A tank of 200 × 60 × 60 cm with these groups. */
export function planOf(groups: readonly Group[], { tank = {}, water = {} }: Changes = {}): Plan {
  return {
    tank: { base: { shape: "rectangle", length: 200, width: 60 }, height: 60, ...tank },
    water: { temperature: 24, pH: 7, generalHardness: 8, ...water },
    groups,
  };
}

/** The verdict of one rule alone on a pair. */
export const pairBy = (rule: Rule, a: Party, b: Party, thresholds?: Partial<ThresholdValues>): Verdict =>
  assessPair(a, b, { rules: [rule], thresholds });

/** The verdict of one rule alone on a plan. */
export const planBy = (
  rule: Rule,
  groups: readonly Group[],
  changes?: Changes,
  thresholds?: Partial<ThresholdValues>,
): Verdict => assessPlan(planOf(groups, changes), { rules: [rule], thresholds });

/** The weights of what stands and of what the plan meets. */
export const weighed = ({ findings, met }: Verdict) => ({
  findings: findings.map(({ weight }) => weight),
  met: met.map(({ weight }) => weight),
});

/** The findings of one rule of the library. */
export const findingsOf = <Id extends RuleId>(
  { findings }: Verdict,
  id: Id,
): readonly Extract<Finding, { readonly rule: Id }>[] =>
  findings.filter((finding) => finding.rule === id) as Extract<Finding, { readonly rule: Id }>[];

/** The traits, or the facts of the plan, that questions are about. */
export const traitsAsked = ({ open }: Verdict) =>
  open.flatMap((question) => ("trait" in question ? [question.trait] : []));
export const inputsAsked = ({ open }: Verdict) =>
  open.flatMap((question) => ("on" in question ? [question.on] : []));
