/**
 * What to change: remedies and turning points of a plan, who could join it, and the water, the tank, the mixture of waters
 * and the food that serve some animals; each judged again by the rules that judge plans.
 *
 * @packageDocumentation
 */
export type { Swing, WaterAxis } from "../compatibility/inner";
export { InvalidInputError, OutsideDomainError } from "../errors";
export type { EntryNitrogen, EntryOrder, EntryReason, EntryStep, NoEntryOrder } from "./entry-order/answer";
export { type EntryOrderOptions, entryOrder } from "./entry-order/entry-order";
export {
  type FedGroup,
  type FeedingPlan,
  feedingPlan,
  type GivenOffering,
  type NitrogenOfFood,
} from "./feeding-plan/feeding-plan";
export { type LeastTank, type LeastTankOptions, leastTank } from "./least-tank/least-tank";
export { standardTanks } from "./least-tank/standard-tanks";
export {
  type MixedWater,
  type MixWaterInput,
  mixWater,
  type OutOfReach,
  type WantedHardness,
} from "./mix-water/mix-water";
export {
  nitrateLimit,
  type WeeklyChange,
  type WeeklyChangeInput,
  weeklyChange,
} from "./mix-water/weekly-change";
export type { Move, MoveKind } from "./remedies/move";
export { type Remedies, type Remedy, type RemedyOptions, remedies } from "./remedies/remedies";
export type {
  DoubtfulWater,
  LargestCompany,
  Limits,
  NoSetPoint,
  OpenWater,
  PerAxis,
  SetPoint,
  WaterBeyondKept,
  WaterConflict,
} from "./set-point/answer";
export { type HotEnd, unionizedAmmoniaLimit } from "./set-point/hot-end";
export { setPoint } from "./set-point/set-point";
export type { SetPointOptions } from "./set-point/terms";
export type { OfIndividuals } from "./suspects/individuals";
export { type Look, looks } from "./suspects/looks";
export { type SeenSign, seenSigns } from "./suspects/signs";
export { type Suspect, type SuspectAct, suspects } from "./suspects/suspects";
export type { Followed, TurningFact } from "./turning-points/axis";
export { type Stretch, type TurningOptions, turningPoints } from "./turning-points/turning-points";
export type { Relations } from "./who-could-join/newcomer";
export {
  type Joining,
  type JoinOptions,
  type Refused,
  type WhoCouldJoin,
  whoCouldJoin,
} from "./who-could-join/who-could-join";
