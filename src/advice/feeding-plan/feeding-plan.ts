import { type AssessOptions, type Planner, planner } from "../../compatibility";
import { joinable, takes } from "../../compatibility/inner";
import { filterCapacity } from "../../load";
import type { Condition, Offering, Plan } from "../../plan";
import { speciesOf } from "../../plan/inner";
import type { Range } from "../../ranges";
import { lights } from "../../species/inner";
import { conditionsOf } from "../conditions-of";
import { type Appetite, appetitesOf } from "./appetites";
import { fewest, type Reaching, reaching } from "./offerings";
import { nitrogenOf, type Rationed, rationsOf, totalOf } from "./rations";

/** How some animals are fed. */
export interface FeedingPlan {
  /** What is given each day, in the order of the day: what is free before what is given apart. */
  readonly offerings: readonly GivenOffering[];
  /** What each group gets, in the order of the plan's groups. */
  readonly groups: readonly FedGroup[];
  /** Groups that no offering is known to reach: nobody knows what, where or when they feed, or what outpaces them. */
  readonly unreached: readonly number[];
  /** Days a week without food: one, where all are grown and no young are wanted; else none. Common practice, no source. */
  readonly restDays: 0 | 1;
  /** What the rations do to the water; absent where no ration is known. */
  readonly nitrogen?: NitrogenOfFood;
  /** The plan with these offerings in place of its own. */
  readonly plan: Plan;
}

/** Food as it is given once a day. */
export interface GivenOffering extends Offering {
  /** The groups for which it is meant, as indices into the plan's groups. */
  readonly reaches: readonly number[];
  /** The groups that would take it from them: sate these first elsewhere, or hold them back. */
  readonly holdBack: readonly number[];
}

/** What one group gets. */
export interface FedGroup extends Rationed {
  /** Indices into `offerings`. */
  readonly offerings: readonly number[];
}

/** What food does to the water. */
export interface NitrogenOfFood {
  /** Ammonia nitrogen that comes of it, mg a day. */
  readonly given: Range;
  /** What the filter of the plan takes up, mg a day; absent where the plan names none. */
  readonly filter?: Range;
}

/**
 * How to feed the animals of a plan: the fewest offerings a day with which the rules about food have nothing to ask and
 * everybody gets a food that can be the whole of its diet, where one is known; each reaches by itself the groups that it is
 * meant for; and how much.
 *
 * Where a group is outpaced by a faster one, it is given what, where or when the other does not feed, else its food
 * apart, while the faster one is held back or sated. Of equally few offerings the plainest: dry food, by day, free.
 *
 * Rations are those of `ration` for grown fish that are kept and not fattened, for the lightest and the heaviest that they
 * may be (`bodyMass`), at the plan's temperature; below 10 °C, where fish hardly eat, from nothing on: what is left after
 * a few minutes was too much. Frozen and live food weighs four to five times as much. There are none
 * for groups with young, which need several times as much for their mass, nor for fish that are said to be shorter than
 * grown ones, for fish of unknown length, for rays, whose disc tells no mass, and for shrimps, snails and others, of which
 * no rate was found; `nitrogen` leaves these out, so that it is a least.
 *
 * @param options The rules and numbers to judge by, as in `assessPlan`.
 * @throws InvalidInputError for what `assessPlan` refuses.
 * @throws OutsideDomainError for a temperature outside that of `ration`, 0 to 40 °C, and for a stock that eats more than a
 * tonne a day.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
 * import { feedingPlan } from "vivary/advice";
 *
 * const { offerings } = feedingPlan({
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   water: { temperature: 23 },
 *   groups: [{ species: danioRerio, unsexed: 10 }, { species: hoplisomaPanda, unsexed: 6 }],
 * });
 * offerings.map(({ food, place }) => [food, place]); // => [["dry", "surface"], ["dry", "bottom"]]
 * ```
 */
export function feedingPlan(plan: Plan, options: AssessOptions = {}): FeedingPlan {
  const judged = planner({ ...plan, offerings: [] }, options);
  const appetites = appetitesOf(plan, askedOf(judged, options));
  const chosen = fewest(reaching(judged.plan, appetites))
    .map(({ offering, reaches }) => ({ offering, reaches: groupsOf(reaches, appetites) }))
    .sort(inTheDay);
  const reached = new Set(chosen.flatMap(({ reaches }) => reaches));
  const rations = rationsOf(plan);
  const nitrogen = nitrogenFrom(
    plan,
    rations.map(({ ration }) => ration),
  );
  return {
    offerings: chosen.map((one) => given(one, plan)),
    groups: rations.map((rationed, of) => ({
      offerings: chosen.flatMap(({ reaches }, index) => (reaches.includes(of) ? [index] : [])),
      ...rationed,
    })),
    unreached: [...plan.groups.keys()].filter((of) => !reached.has(of)),
    restDays: rations.some(({ growing }) => growing) || plan.groups.some(({ raises }) => raises) ? 0 : 1,
    ...(nitrogen && { nitrogen }),
    plan: judged.with({ offerings: chosen.map(({ offering }) => offering) }).plan,
  };
}

/** What a plan does not meet, on the adopted facts; of its whole verdict where these do not tell. */
function askedOf(judged: Planner, options: AssessOptions): readonly Condition[] {
  const { counting } = joinable(judged.plan, options);
  if (counting)
    return counting.flatMap(({ condition, state }) => (condition && state !== "met" ? [condition] : []));
  return conditionsOf(judged.verdict.findings);
}

/** The groups that have some appetites. */
const groupsOf = (some: readonly number[], appetites: readonly Appetite[]): readonly number[] => [
  ...new Set(some.flatMap((index) => appetites[index]?.of ?? [])),
];

/** By the hour, and what is free first: it sates those that are to be held back. */
function inTheDay({ offering: one }: Reaching, { offering: other }: Reaching): number {
  const hour = ({ light = "day" }: Offering) => lights.indexOf(light);
  return hour(one) - hour(other) || Number(one.apart ?? false) - Number(other.apart ?? false);
}

function given({ offering, reaches }: Reaching, { groups }: Plan): GivenOffering {
  const holdBack = groups.flatMap((group, of) =>
    offering.apart && !reaches.includes(of) && takes(speciesOf(group), offering) ? [of] : [],
  );
  return { ...offering, reaches, holdBack };
}

function nitrogenFrom(
  { tank: { filter } }: Plan,
  rations: readonly (Range | undefined)[],
): NitrogenOfFood | undefined {
  if (rations.every((ration) => ration === undefined)) return undefined;
  return { given: nitrogenOf(totalOf(rations)), ...(filter && { filter: filterCapacity(filter) }) };
}
