import { decimal } from "../../../decimal";
import { standardLength } from "../../../species";
import type { GivenCondition, Judged } from "../../engine/rule/finding";
import type { GivenMeasures, MeasureKinds } from "../../engine/rule/measures";

/** Who might swallow whom, with lengths in cm as they are at one time. */
export interface Meal {
  readonly hunter: number;
  /** Undefined: young, and so small enough. */
  readonly prey: number | undefined;
  readonly preyIsFish: boolean;
  /** Greatest body depth of the prey as a share of its standard length. */
  readonly depthShare: () => number | undefined;
  /** The greatest length of prey that a source states for grown hunters. */
  readonly greatest: number | undefined;
  readonly hunterIsGrown: boolean;
  /** The greatest length the prey's kind reaches, and the usual one of the hunter's, in cm. */
  readonly preyReaches: number;
  readonly hunterUsually: number;
}

/** The measures of a finding about a meal. */
export const mealMeasures = {
  prey: "cm",
  hunter: "cm",
  share: "1",
  greatestPrey: "cm",
  today: "cm",
  turnsAt: "cm",
  safeFrom: "cm",
  hunts: "light",
  defence: "hazard",
  of: "prey",
} as const satisfies MeasureKinds;

/** Measures as a rule gives them. */
export type MealMeasures = GivenMeasures<typeof mealMeasures>;

/** What may be said of a meal. */
export type MealAnswer = Judged<"blocking" | "restricting" | "advisory", typeof mealMeasures>;

interface Shares {
  readonly likelyPrey: number;
  readonly possiblePrey: number;
  readonly preyDepth: number;
}

const eaten = { weight: "blocking", watchFor: "missing animals" } as const;

/**
 * Whether the prey goes down: up to a stated length; where none is stated, fish by the hunter's length and any shrimp
 * or snail. What is stated of grown hunters only caps what a young one can take.
 */
export function judgeMeal(meal: Meal, shares: Shares): MealAnswer | undefined {
  const { hunter, prey, greatest, preyIsFish, hunterIsGrown } = meal;
  if (prey === undefined) return eaten;
  if (greatest !== undefined && prey > greatest) return undefined;
  if (greatest !== undefined && hunterIsGrown)
    return { ...eaten, measures: { prey, greatestPrey: greatest } };
  if (!preyIsFish) return eaten;

  const measures = { prey, hunter, share: prey / hunter };
  if (prey <= decimal(shares.likelyPrey * hunter)) return { ...eaten, measures };
  const possible = decimal(shares.possiblePrey * hunter);
  if (prey > possible || tooDeep(meal, prey, shares)) return undefined;
  return {
    weight: "restricting",
    measures,
    watchFor: "missing animals",
    condition: outOfReach(meal, prey, possible),
  };
}

/** Prey that is long enough; where its kind never is, hunters that stay shorter than the longest on record. */
function outOfReach(
  { hunter, preyReaches, hunterUsually }: Meal,
  prey: number,
  possible: number,
): GivenCondition {
  const most = decimal((prey * hunter) / possible);
  return preyReaches < possible && hunterUsually <= most
    ? { on: "group.length", of: "from", wanted: { max: most } }
    : { on: "group.length", of: "to", wanted: { min: possible } };
}

/** Whether prey is deeper than the hunter's mouth takes, with both lengths at the ends that harm. */
function tooDeep({ hunter, depthShare }: Meal, prey: number, { preyDepth }: Shares): boolean {
  const depth = depthShare();
  return depth !== undefined && depth * standardLength(prey).min > preyDepth * standardLength(hunter).max;
}
