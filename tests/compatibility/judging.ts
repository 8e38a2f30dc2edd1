import {
  assessPair,
  assessPlan,
  type Finding,
  type Group,
  type Party,
  type Plan,
  type PlannedTank,
  type PlannedWater,
  type Rule,
  type ThresholdValues,
  type Verdict,
} from "../../src/compatibility";

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

/** The findings of one rule. */
export const findingsOf = ({ findings }: Verdict, id: string): readonly Finding[] =>
  findings.filter(({ rule }) => rule === id);
