export { type AssessOptions, assessPair } from "./assess-pair";
export { assessPlan } from "./assess-plan";
export type { AssessedPlan } from "./assessed-plan";
export type { Condition, Finding, Judged, Quantity, SideName, Sign, Weight } from "./finding";
export type { Kin } from "./kin";
export type { AssessedParty, VerdictParty } from "./party";
export type { Group, Offering, Party, Plan, PlannedTank, PlannedWater } from "./plan";
export type { FactName } from "./plan-facts";
export {
  defineRule,
  type GroupRule,
  type PairRule,
  type PlanRule,
  type Rule,
  type Seen,
  type Sides,
  type StockRule,
  type TankRule,
} from "./rule";
export { pairRules, planRules, type RuleId } from "./rules";
export type { Stock, Weighed } from "./stock";
export { type Threshold, type ThresholdName, type ThresholdValues, thresholds } from "./thresholds";
export type { OpenQuestion, Outcome, Verdict } from "./verdict";
