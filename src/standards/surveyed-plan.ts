import type { Plan } from "../compatibility";
import { assessedPlan } from "../compatibility/assessed-plan";
import { type Fish, fishOf } from "./fish";
import { type TankMeasures, tankMeasures } from "./tank-measures";

/** A plan as requirements see it. */
export interface SurveyedPlan {
  readonly measures: TankMeasures;
  readonly base: Plan["tank"]["base"];
  /** °dH. */
  readonly generalHardness: number;
  readonly fish: readonly Fish[];
}

/** A plan checked as `assessPlan` checks it, with its tank measured and its fish sized. */
export function surveyedPlan(plan: Plan): SurveyedPlan {
  const assessed = assessedPlan(plan);
  const { tank, water, parties } = assessed;
  return {
    measures: tankMeasures(assessed),
    base: tank.base,
    generalHardness: water.generalHardness,
    fish: plan.groups.flatMap((group, index) => {
      const party = parties[index];
      return party ? fishOf(group, party.species) : [];
    }),
  };
}
