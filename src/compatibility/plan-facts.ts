import { contains } from "../ranges";
import type { AssessedPlan } from "./assessed-plan";
import { settlingCompany } from "./company";
import type { Condition } from "./finding";
import type { AssessedParty } from "./party";

type FactValue = number | string | boolean | undefined;

/** The facts of the tank and its water that a condition may be about. `undefined`: the plan does not say. */
const tankFacts = {
  "tank.longestRun": ({ nominal }) => nominal.longestRun,
  "tank.footprint": ({ nominal }) => nominal.footprint,
  "tank.lid": ({ tank }) => tank.lid,
  "tank.cover": ({ tank }) => tank.cover,
  "tank.plants": ({ tank }) => tank.plants,
  "tank.flow.calmest": ({ tank }) => tank.flow?.calmest,
  "tank.flow.strongest": ({ tank }) => tank.flow?.strongest,
  "water.temperature": ({ water }) => water.temperature,
  "water.hottest": ({ water }) => water.hottest,
  "water.coolest": ({ water }) => water.coolest,
  "water.pH": ({ water }) => water.pH,
  "water.generalHardness": ({ water }) => water.generalHardness,
  "water.salinity": ({ water }) => water.salinity,
} satisfies Record<string, (plan: AssessedPlan) => FactValue>;

/** The facts of a group that a condition may be about. */
const groupFacts = {
  "group.count": ({ count }) => count,
  "group.males": ({ males }) => males,
  "group.females": ({ females }) => females,
  "group.pairs": ({ males, females }) =>
    males === undefined || females === undefined ? undefined : Math.min(males, females),
  "group.femalesPerMale": ({ males, females }) =>
    males === undefined || females === undefined ? undefined : females / males,
  "group.length": ({ length }) => length,
  "group.longFins": ({ species }) => species.appearance?.longFins?.value,
  "group.company": (party, plan) => settlingCompany(party, plan),
} satisfies Record<string, (party: AssessedParty, plan: AssessedPlan) => FactValue>;

/** The name of a fact of a plan. */
export type FactName = keyof typeof tankFacts | keyof typeof groupFacts;

/** Whether a plan meets a condition, or does not say. */
export function checkCondition(condition: Condition, plan: AssessedPlan): "met" | "unmet" | "not-given" {
  const value = factOf(condition, plan);
  if (value === undefined) return "not-given";
  if ("within" in condition) {
    return typeof value === "number" && contains(condition.within, value) ? "met" : "unmet";
  }
  const accepted = Array.isArray(condition.is) ? condition.is : [condition.is];
  return accepted.includes(value) ? "met" : "unmet";
}

function factOf({ on, of }: Condition, plan: AssessedPlan): FactValue {
  if (on in tankFacts) return tankFacts[on as keyof typeof tankFacts](plan);
  const party = of === undefined ? undefined : plan.parties[of];
  return party && groupFacts[on as keyof typeof groupFacts](party, plan);
}
