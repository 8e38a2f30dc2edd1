/**
 * Verdicts, advice and profiles in words: as text or Markdown, in a language and a system of units.
 *
 * @packageDocumentation
 */

export { InvalidInputError } from "../errors";
export type { AdviceDescribeOptions, AdviceWritingOptions } from "./describe/advice-written";
export type { ReportPartName } from "./describe/blocks";
export type { VerdictPart } from "./describe/checked-verdict";
export {
  type DescribeOptions,
  describe,
  describeIn,
  type SentenceOptions,
  sentence,
  sentenceIn,
  type WritingOptions,
} from "./describe/describe";
export { describeEntryOrder, describeEntryOrderIn } from "./describe/entry-order/describe-entry-order";
export { describeFeedingPlan, describeFeedingPlanIn } from "./describe/feeding-plan/describe-feeding-plan";
export {
  type ReportPart,
  type ReportPartsOptions,
  reportParts,
  reportPartsIn,
} from "./describe/report-parts";
export {
  describeRequirements,
  describeRequirementsIn,
  type RequirementDescribeOptions,
} from "./describe/requirements/describe-requirements";
export { describeSetPoint, describeSetPointIn } from "./describe/set-point/describe-set-point";
export { describeSuspects, describeSuspectsIn } from "./describe/suspects/describe-suspects";
export type { Figure, WriteQuantity } from "./figure";
export type {
  AdviceMessages,
  AdviceWords,
  FilterState,
  ToldAim,
  ToldAnimals,
  ToldBetween,
  ToldEntry,
  ToldNitrogen,
  ToldOffering,
  ToldSuspect,
} from "./messages/advice-messages";
export { english } from "./messages/english";
export { englishAdvice } from "./messages/english-advice";
export { englishLawgivers } from "./messages/english-lawgivers";
export { englishPages } from "./messages/english-page";
export { englishRequirements } from "./messages/english-requirements";
export type { LawgiverNames } from "./messages/lawgiver-names";
export type {
  DoubtReason,
  Messages,
  PictureMark,
  Place,
  PlanWords,
  RuleSentences,
  SpelledWords,
  Told,
  ToldCondition,
  ToldHeadline,
  ToldParty,
  ToldRoom,
  ToldWater,
  TraitItem,
  ValueSentences,
} from "./messages/messages";
export type {
  CompanionReason,
  PageMessages,
  PageWords,
  PreyLengths,
  SectionId,
  ToldAct,
  ToldGroup,
  ToldLength,
  ToldName,
  ToldSign,
  ToldSupport,
  Trouble,
} from "./messages/page-messages";
export type {
  DependsOn,
  LengthsTaken,
  RequirementMessages,
  RequirementWords,
  ToldAsked,
  ToldHas,
  ToldInstrument,
  ToldOpen,
  ToldRequirement,
} from "./messages/requirement-messages";
export type { LinkTo } from "./page/as-markdown";
export type { PageSource } from "./page/page-source";
export { type SpeciesPageOptions, speciesPage, speciesPageIn } from "./page/species-page";
export { type RangeChartOptions, rangeChart, rangeChartIn } from "./pictures/range-chart/range-chart";
export { type SizeChartOptions, sizeChart, sizeChartIn } from "./pictures/size-chart/size-chart";
export { type ProfileOptions, profileMarkdown, profileMarkdownIn } from "./profile/profile-markdown";
export { type UnitSystem, unitSystems } from "./quantities";
export type { ShownUnit } from "./shown-unit";
