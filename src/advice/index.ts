/**
 * What to change: advice that is computed, each piece of it judged again by the rules of `vivary/compatibility`.
 *
 * @packageDocumentation
 */
export type { Move, MoveKind } from "./remedies/move";
export { type Remedies, type Remedy, type RemedyOptions, remedies } from "./remedies/remedies";
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
