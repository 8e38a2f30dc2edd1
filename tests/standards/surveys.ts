import type { Group, PlannedTank } from "../../src/plan";
import type { AdultLength, SpeciesProfile } from "../../src/species";
import { type SurveyedPlan, surveyedPlan } from "../../src/standards/surveyed-plan";
import { adults, animal, type Stated } from "../compatibility/animals";
import { planOf } from "../compatibility/judging";

/** Adults of one standard length, in cm. */
export const ofStandardLength = (length: number): readonly AdultLength[] => [
  { length, measure: "SL", as: "usual", total: { min: length / 0.85, max: length / 0.8 } },
];

/** A fish nobody has seen, of one usual total length in cm. */
export const fishOfLength = (id: string, total: number, stated: Stated = {}): SpeciesProfile =>
  animal(id, { "size.adultLength": adults(total), ...stated });

/** A fish of a standard length in cm. */
export const fishOfStandardLength = (id: string, length: number): SpeciesProfile =>
  animal(id, { "size.adultLength": ofStandardLength(length) });

/** The same animal in a family. */
export const inFamily = (species: SpeciesProfile, family: string): SpeciesProfile => ({
  ...species,
  taxonomy: { ...species.taxonomy, family },
});

/** A rectangular tank measured outside glass of no thickness, in cm. */
export const box = (length: number, width: number, height: number): PlannedTank => ({
  base: { shape: "rectangle", length, width },
  height,
  measured: "outer",
});

/** A plan as requirements see it. */
export const surveyOf = (groups: readonly Group[], tank: PlannedTank = box(60, 30, 30)): SurveyedPlan =>
  surveyedPlan(planOf(groups, { tank }));
