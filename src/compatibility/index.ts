/**
 * Whether animals go together, in which tank and why: verdicts made of findings by rules, with the conditions that
 * would mend them and the bounds within which the answer lies.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export { type Crowd, counting } from "./animals/crowd";
export { type Stock, type Weighed, weighing } from "./animals/stock";
export type { Estimate, Summed, Summing } from "./animals/summing";
export type { AssessOptions, ThresholdOptions } from "./assess/assess-options";
export { assessPair } from "./assess/assess-pair";
export { assessPairBy } from "./assess/assess-pair-by";
export { assessPlan } from "./assess/assess-plan";
export { assessPlanBy } from "./assess/assess-plan-by";
export { type Outcomes, outcomes } from "./assess/outcomes";
export type {
  DisputedQuestion,
  MissingQuestion,
  OpenQuestion,
  QuestionCore,
} from "./engine/answers/questions";
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
export { pairPlan } from "./meeting/pair-plan";
export { planThatMeets } from "./meeting/plan-that-meets";
export { type WitnessOptions, witness } from "./meeting/witness";
export type { Changed, ChangedGroups, PlanChange } from "./planner/plan-change";
export { type Planner, planner } from "./planner/planner";
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
} from "./verdict/verdict";
