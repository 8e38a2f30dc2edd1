/**
 * Plans as data: what a tank, its water and its animals are, saved and checked, and whether a plan meets a condition.
 *
 * @packageDocumentation
 */
export { describeProblem, InvalidInputError, type Problem, type ProblemCode } from "../errors";
export { type Planting, plantings, type Temper, tempers } from "./choices";
export { type Condition, isMet, type Wanted } from "./facts/condition";
export type { FactUnit } from "./facts/fact-units";
export { facts, fieldsOf, type PlanFact } from "./facts/facts";
export type { FactName, PlanReadings } from "./facts/read-fact";
export { type Lawgiver, lawgivers } from "./generated";
export type { Kin, Numbers } from "./kin";
export type { Animals } from "./party";
export type {
  Group,
  Offering,
  Party,
  Plan,
  PlannedFilter,
  PlannedTank,
  PlannedWater,
} from "./plan";
export {
  type ParsedPlan,
  parsePlan,
  type Renamed,
  type SpeciesLookup,
  safeParsePlan,
} from "./saved/parse-plan";
export { type GroupData, type PlanData, planData } from "./saved/plan-data";
export { planJsonSchema } from "./saved/plan-json-schema";
export { speciesIn } from "./saved/species-in";
