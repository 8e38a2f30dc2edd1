/** What the floors above read of a checked plan; no part of the public surface. */
export { changedFacts, meetsAlike } from "./changed-facts";
export { type CheckedPlan, checkedPair, checkedPlan, measuredPlan, refuseUnsound } from "./checked-plan";
export { adoptedTraits, conditionProblems, holds, jointCondition } from "./condition";
export { factUnits } from "./fact-units";
export { kinOf, mayHave } from "./kin";
export { type CheckedParty, isSameParty, partiesOfGroups, speciesOf } from "./party";
export { mostGroups } from "./plan-shape";
export { isUnchangeable, profileProblems, profilesOf } from "./profile-problems";
export { isFact, isReading, type PlanReadings, readPlan, traitsOfFacts } from "./read-fact";
export { isObject } from "./shape/shape-problems";
