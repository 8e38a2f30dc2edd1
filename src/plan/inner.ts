/** What the floors above read of a checked plan; no part of the public surface. */

export {
  type CheckedPlan,
  checkedPair,
  checkedPlan,
  checkedPlanToFill,
  measuredPlan,
  refuseUnsound,
} from "./checked-plan";
export { changedFacts, meetsAlike } from "./facts/changed-facts";
export {
  adoptedTraits,
  conditionProblems,
  holds,
  jointCondition,
  refuseBesideFact,
} from "./facts/condition";
export { factUnits } from "./facts/fact-units";
export { factLabels } from "./facts/facts";
export { isFact, isReading, type PlanReadings, readPlan } from "./facts/read-fact";
export { headcount } from "./headcount";
export { kinOf, mayHave } from "./kin";
export { type CheckedParty, isSameParty, partiesOfGroups, speciesOf } from "./party";
export { isUnchangeable, profileProblems, profilesOf } from "./profile-problems";
export { mostGroups, mostPlaces } from "./shape/plan-shape";
