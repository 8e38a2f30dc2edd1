import type { Plan } from "../plan";
import { checkedPlan } from "../plan/inner";
import { type Fish, fishOf } from "./fishes/fish";
import { type TankMeasures, tankMeasures } from "./tank-measures";

/** A plan as requirements see it. */
export interface SurveyedPlan {
  readonly measures: TankMeasures;
  readonly base: Plan["tank"]["base"];
  /** °dH; absent where the plan does not give it. */
  readonly generalHardness?: number;
  readonly fish: readonly Fish[];
  /** Whether animals live there that are no fish. */
  readonly hasOthers: boolean;
}

/** A plan checked as `assessPlan` checks it, with its tank measured and its fish sized. */
export function surveyedPlan(plan: Plan): SurveyedPlan {
  const checked = checkedPlan(plan);
  const { tank, water, parties } = checked;
  const { generalHardness } = water;
  return {
    measures: tankMeasures(checked),
    base: tank.base,
    ...(generalHardness !== undefined && { generalHardness }),
    fish: plan.groups.flatMap((group, index) => {
      const party = parties[index];
      return party ? fishOf(group, party.species) : [];
    }),
    hasOthers: parties.some(({ species }) => species.taxonomy.kind !== "fish"),
  };
}
