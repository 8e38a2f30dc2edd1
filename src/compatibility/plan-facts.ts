import { decimal } from "../decimal";
import { refusal } from "../errors";
import { filterCapacity } from "../load";
import type { AssessedPlan } from "./assessed-plan";
import { certain, settlingCompany } from "./company";
import { offeringsFor } from "./offerings";
import type { AssessedParty } from "./party";

type FactValue = number | string | boolean | readonly string[] | undefined;

/** The facts of the tank and its water that a condition may be about. `undefined`: the plan does not say. */
const tankFacts = {
  "tank.longestRun": ({ nominal }) => nominal.longestRun,
  "tank.footprint": ({ nominal }) => nominal.footprint,
  "tank.height": ({ nominal }) => nominal.height,
  "tank.lid": ({ tank }) => tank.lid,
  "tank.cover": ({ tank }) => tank.cover,
  "tank.openWater": ({ tank }) => tank.openWater ?? leftBy(tank.cover),
  "tank.openSurface": ({ tank }) => tank.openSurface,
  "tank.sightBreaks": ({ tank }) => tank.sightBreaks,
  "tank.plants": ({ tank }) => tank.plants,
  "tank.flow.calmest": ({ tank }) => tank.flow?.calmest,
  "tank.flow.strongest": ({ tank }) => tank.flow?.strongest,
  "tank.filter.ripeArea": ({ tank }) => tank.filter && ripeArea(tank.filter),
  "water.temperature": ({ water }) => water.temperature,
  "water.hottest": ({ water }) => water.hottest,
  "water.coolest": ({ water }) => water.coolest,
  "water.pH": ({ water }) => water.pH,
  "water.generalHardness": ({ water }) => water.generalHardness,
  "water.salinity": ({ water }) => water.salinity,
} satisfies Record<string, (plan: AssessedPlan) => FactValue>;

/** The facts of a group that a condition may be about; numbers are those of its species in the whole plan. */
const groupFacts = {
  "group.count": ({ kin }) => kin.count,
  "group.males": ({ kin }) => kin.males,
  "group.females": ({ kin }) => kin.females,
  "group.pairs": ({ kin: { males, females } }) =>
    males === undefined || females === undefined ? undefined : Math.min(males, females),
  "group.femalesPerMale": ({ kin: { males, females } }) =>
    males && females !== undefined ? females / males : undefined,
  "group.length": ({ length }) => length,
  "group.longFins": ({ species }) => certain(species.appearance?.longFins),
  "group.company": (party, plan) => settlingCompany(party, plan),
  "group.grown": ({ stage }) => stage === undefined || stage === "adult",
  "group.offerings": (party, plan) => offeringsFor(party, plan),
} satisfies Record<string, (party: AssessedParty, plan: AssessedPlan) => FactValue>;

/** The surface of media that are surely ripe, m². */
const ripeArea = (filter: NonNullable<AssessedPlan["tank"]["filter"]>) =>
  filterCapacity(filter).min > 0 ? filter.mediaArea : 0;

/** The share that is surely open where a share is cover. */
const leftBy = (cover: number | undefined) => (cover === undefined ? undefined : decimal(1 - cover));

/** The name of a fact of a plan. */
export type FactName = keyof typeof tankFacts | keyof typeof groupFacts;

/**
 * A fact of a plan; `undefined` where the plan does not say.
 *
 * @throws InvalidInputError where there is no such fact, or no party it could be about.
 */
export function factOf(plan: AssessedPlan, on: FactName, of: number | undefined): FactValue {
  if (Object.hasOwn(tankFacts, on)) return tankFacts[on as keyof typeof tankFacts](plan);
  const party = of === undefined ? undefined : plan.parties[of];
  if (!party || !Object.hasOwn(groupFacts, on)) {
    const known = [...Object.keys(tankFacts), ...Object.keys(groupFacts)].join(", ");
    throw refusal("condition.on", `one of ${known}; of a group, with the party it is about`, on);
  }
  return groupFacts[on as keyof typeof groupFacts](party, plan);
}
