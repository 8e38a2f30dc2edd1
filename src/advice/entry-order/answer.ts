import type { Outcome } from "../../compatibility";
import type { Range } from "../../ranges";

/** Who moves in when. */
export interface EntryOrder {
  /** In their order, the days no sooner than which they can be. */
  readonly steps: readonly EntryStep[];
  readonly reason?: undefined;
}

/** Groups that move in on one day. */
export interface EntryStep {
  /** The first day that will do, counted from the day on which the tank is set up; 0 for those that are there already. */
  readonly day: number;
  /** Indices into the plan's groups. */
  readonly groups: readonly number[];
  /** Why on that day and in that place of the order. */
  readonly because: readonly EntryReason[];
  /** What is judged of the plan with all that are in by then, once the tank has ripened. */
  readonly outcome: Outcome;
  /** What all that are in by then do to the water once grown; absent where no ration is known. */
  readonly nitrogen?: EntryNitrogen;
}

/** What animals give off once grown, and the filter takes up on the day on which some of them move in, mg a day. */
export interface EntryNitrogen {
  /**
   * Ammonia nitrogen, of all animals grown and fed, however short they come, at the temperature of the plan (else 27 °C, at
   * which `filter-nitrogen` reckons); those left out of whom `feedingPlan` knows no ration once they are grown.
   */
  readonly given: Range;
  /** What the filter takes up by then; absent where the plan names none. */
  readonly filter?: Range;
}

/** Why some animals move in when they do. Groups are indices into the plan's. */
export type EntryReason =
  | { readonly reason: "there-already" }
  | {
      /**
       * `filter-ripens`: until the filter is surely ripe. `quarantine`: kept apart to see whether they are ill, each step
       * by itself, once a tank for it is free. `filter-follows`: until the filter takes up what those before them give off.
       * `plants-grow-in`: they need plants that have grown in, or harm those that have not; these are set on the first day,
       * also where the plan says nothing of plants. `stated-day`: the plan has them move in no sooner.
       */
      readonly reason: "filter-ripens" | "quarantine" | "filter-follows" | "plants-grow-in" | "stated-day";
      /** No sooner than on this day. */
      readonly day: number;
    }
  | {
      /** Others have first to grow past what these would do to them. */
      readonly reason: "others-grow";
      /** Who has to grow. */
      readonly group: number;
      /** Total length, cm: measure them, whatever the day. */
      readonly length: number;
      /** The day on which all are likely so long; absent where nobody knows how they grow. */
      readonly day?: number;
    }
  | {
      /** Without others that are there before them these rules would have something against it. */
      readonly reason: "others-first";
      readonly groups: readonly number[];
      readonly rules: readonly string[];
    }
  /** They defend a place, which those that come later would have to win from them. */
  | { readonly reason: "defends-place" }
  /** They may eat these, which know the tank by then. */
  | { readonly reason: "may-eat"; readonly groups: readonly number[] }
  /** They move in on one day, since none of them may do so before the others. */
  | { readonly reason: "together" };

/** That there is no order, and why. */
export interface NoEntryOrder {
  readonly steps?: undefined;
  /**
   * `unsuitable`: so is the whole plan. `others-there`: animals live in the tank already that would harm
   * these, which are still too short. `both-grow-first`: each of these would have to grow before the others come.
   * `worse-before`: whoever of these comes next, the rules have something against it that they do not have against the
   * whole plan. `not-found`: none was found in the search of a plan with more than six species.
   */
  readonly reason: "unsuitable" | "others-there" | "both-grow-first" | "worse-before" | "not-found";
  /** Indices into the plan's groups: whom it is about. */
  readonly groups: readonly number[];
  /** The rules that speak against it. */
  readonly rules: readonly string[];
}
