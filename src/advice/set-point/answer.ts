import type { WaterAxis } from "../../compatibility/inner";
import type { PlannedWater } from "../../plan";
import type { PartialRange } from "../../ranges";
import type { HotEnd } from "./hot-end";

/** A number for each figure of water; absent where nobody says what any of the animals is kept in. */
export type PerAxis<Value> = { readonly [Axis in WaterAxis]?: Value };

/** Water for all. */
export interface SetPoint {
  /** What to aim at, ready for a plan: °C, °dH, g/kg; with a swing its hottest and coolest as well. */
  readonly water: PlannedWater;
  /**
   * How far each figure may move either way, beside the swing: before one of the animals has water that it is not kept
   * in, or where what all are kept in is too narrow to be held, before it has water that it cannot be given.
   */
  readonly margin: PerAxis<number>;
  /** Whose ends limit that: places in the list, absent where none does. */
  readonly limiting: PerAxis<Limits>;
  /** The hot end, where `totalAmmonia` is given: what water at the far end of margin and swing holds. */
  readonly hotEnd?: HotEnd;
  /** Of whom nobody says what they are kept in: the others decide alone. */
  readonly open: readonly OpenWater[];
  /**
   * Of whom a figure with its margin goes beyond what they are kept in, since what all are kept in is too narrow to be held,
   * or nothing: it stays within what they can be given, the edge of what they can take for long. And of whom the hottest day
   * or the coolest season of `water` does so, which will do for a while. `assessPlan` says the same of such water. A pH or
   * hardness that swings may do so too; of that a plan knows nothing.
   */
  readonly beyondKept: readonly WaterBeyondKept[];
  /** Figures of which nobody knows whether two share them, nor, where these do not swing, `assessPlan`. */
  readonly doubtful: readonly DoubtfulWater[];
  readonly conflict?: undefined;
}

/** A figure of water past what an animal is kept in, and within what it can be given. */
export interface WaterBeyondKept {
  readonly on: WaterAxis;
  /** Place in the list. */
  readonly of: number;
  /** What it is kept in by the adopted facts: °C, °dH, g/kg. */
  readonly kept: PartialRange;
  /** Of a figure that only swings past it: when. Absent where it is so for good. */
  readonly when?: "hottest" | "coolest" | "swinging";
}

/** A figure of water that two animals perhaps do not share. */
export interface DoubtfulWater {
  readonly on: WaterAxis;
  /** Places in the list, as in a {@link WaterConflict}. */
  readonly between: readonly [number, number];
  /**
   * They meet only by the vague end of a handbook's class, of which on each figure the two are told that prove it; or only
   * where both have water that they are not kept in.
   */
  readonly reason: "class-end" | "both-give-way";
}

/** Whose ends limit a figure of water, by place in the list. */
export interface Limits {
  /** The one that needs it highest; absent where nobody says of any what is too low. */
  readonly least?: number;
  /** The one that bears it least high; absent where nobody says of any what is too high, and where ammonia ends it. */
  readonly most?: number;
}

/** A figure of water of which nobody says what an animal is kept in. */
export interface OpenWater {
  readonly on: WaterAxis;
  /** Place in the list. */
  readonly of: number;
}

/** No water for all. */
export interface NoSetPoint {
  readonly conflict: WaterConflict;
  /** The most of them that share water, and that water. */
  readonly largest: LargestCompany;
}

/** Two animals that prove that no water serves all. */
export interface WaterConflict {
  /** The figure that they do not share; `ammonia` where water warm and alkaline enough for both would hold too much of it. */
  readonly on: WaterAxis | "ammonia";
  /**
   * Places in the list: the one that needs the figure highest, and the one that bears it least high; of ammonia the one
   * that needs it warmest, and the one that needs it most alkaline. One place twice where an animal alone proves it.
   */
  readonly between: readonly [number, number];
  /** Whether it is certain; not where the optimum of one stands in for what nobody states that it is kept in. */
  readonly isCertain: boolean;
}

/** Those that can stay together. */
export interface LargestCompany {
  /** Places in the list. */
  readonly stay: readonly number[];
  /** Places in the list. */
  readonly leave: readonly number[];
  /** Water for those that stay; its places are those of `stay`'s animals in the whole list. Absent where none can stay. */
  readonly setPoint?: SetPoint;
}
