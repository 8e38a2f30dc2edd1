import type { JointCondition, PlanChange } from "../../compatibility";

/**
 * What a keeper does in one go. `feeding`: what is fed, where and when. `cover`: plants, roots, stones and what breaks the
 * line of sight. `ground`: what covers it, and places to hide. `current`: a calm place, or one that moves. `water`: its set
 * point, all its figures. `filter`: more media, or ripe ones. `entry`: a group moves in only once it is long enough.
 * `numbers`: more of each kind that is short of its own, in the sexes that it needs. `company`: a calm species that settles a shy one. `tank`: a larger
 * one. `form`: animals of another form in place of those planned. `rehome`: a group, or some of it, goes to another keeper.
 */
export type MoveKind =
  | "feeding"
  | "cover"
  | "lid"
  | "ground"
  | "current"
  | "entry"
  | "water"
  | "filter"
  | "numbers"
  | "company"
  | "tank"
  | "form"
  | "rehome";

/** One thing to do. */
export interface Move {
  readonly kind: MoveKind;
  /**
   * The group it is about, by its place in the plan as given; absent: several groups, the tank, its water, what is fed, who
   * comes in.
   */
  readonly of?: number;
  /** How many animals go to another tank that suits them. They are never let loose. */
  readonly moved: number;
  /**
   * What it changes. Groups are named by their places in the plan as given: the moves of a remedy can be made one after
   * another, in the order in which they stand.
   */
  readonly change: PlanChange;
  /** What it sees to, its groups named by their places in the plan as given. */
  readonly meets: readonly Pick<JointCondition, "on" | "of" | "wanted" | "aim">[];
}

/**
 * What a move costs a keeper, as a rank: what is done with what is at hand; what has to be bought or kept up, and animals of
 * a kind that are there; a further species; a tank; animals given away. Common practice.
 */
export const costs: Readonly<Record<MoveKind, number>> = {
  feeding: 1,
  cover: 1,
  lid: 1,
  ground: 1,
  current: 1,
  entry: 1,
  water: 2,
  filter: 2,
  numbers: 2,
  company: 3,
  tank: 4,
  form: 5,
  rehome: 5,
};
