/**
 * Whether animals go together, in which tank and why: verdicts made of findings by rules, with the conditions that
 * would mend them and the bounds within which the answer lies.
 *
 * @packageDocumentation
 */
export type { OnScales, Stock, Weighed } from "./animals/stock";
export type { AssessOptions, ThresholdOptions } from "./assess-options";
export { assessPair } from "./assess-pair";
export { assessPairBy } from "./assess-pair-by";
export { assessPlan } from "./assess-plan";
export { assessPlanBy } from "./assess-plan-by";
export type { OpenQuestion, QuestionCore } from "./engine/questions";
export { defineRule } from "./engine/rule/define-rule";
export type {
  AimedCondition,
  FindingOf,
  GivenCondition,
  Judged,
  PartyRole,
  Sign,
} from "./engine/rule/finding";
export type {
  FindingMeasure,
  Given,
  GivenMeasures,
  MeasureKind,
  MeasureKinds,
  MeasuresOf,
  MeasureUnit,
  Quantity,
  WordKind,
  Words,
} from "./engine/rule/measures";
export type {
  PairRule,
  PlanRule,
  PlanSeen,
  Rule,
  RuleAnswer,
  RuleDeclaration,
  RuleWay,
  Seen,
  SeenParty,
  SeenSide,
  SeenThresholds,
  SideTraits,
  TypedRule,
} from "./engine/rule/rule";
export type { Weight } from "./engine/rule/weight";
export { type Outcomes, outcomes } from "./outcomes";
export { pairPlan } from "./pair-plan";
export type { Changed, ChangedGroups, PlanChange } from "./plan-change";
export { planThatMeets } from "./plan-that-meets";
export { type Planner, planner } from "./planner";
export { pairRules, planRules } from "./rules";
export type { ThresholdName, ThresholdValues } from "./threshold-values";
export { type Threshold, thresholds } from "./thresholds";
export type {
  Finding,
  JointCondition,
  LibraryFinding,
  Measures,
  Outcome,
  RuleId,
  Verdict,
  VerdictParty,
} from "./verdict";
export { type WitnessOptions, witness } from "./witness";
