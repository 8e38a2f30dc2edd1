/**
 * Whether animals go together, in which tank and why: verdicts made of findings by rules, with the conditions that
 * would mend them and the bounds within which the answer lies.
 *
 * @packageDocumentation
 */
export type { OnScales, Stock, Weighed } from "./animals/stock";
export type { AssessOptions } from "./assess-options";
export { assessPair } from "./assess-pair";
export { assessPlan } from "./assess-plan";
export { defineRule } from "./engine/define-rule";
export type { FindingOf, GivenCondition, Judged, PartyRole, Sign } from "./engine/finding";
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
} from "./engine/measures";
export type { OpenQuestion, QuestionCore } from "./engine/questions";
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
  SideTraits,
  TypedRule,
} from "./engine/rule";
export type { Weight } from "./engine/weight";
export { pairRules, planRules } from "./rules";
export { type Threshold, type ThresholdName, type ThresholdValues, thresholds } from "./thresholds";
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
