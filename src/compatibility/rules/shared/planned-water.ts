import type { FactName } from "../../../plan";

/** The rules of the water that is planned, each with the fact that it is about, of no season. */
export const plannedWaters = {
  "water-temperature": "water.temperature",
  "water-ph": "water.pH",
  "water-hardness": "water.generalHardness",
  "water-salinity": "water.salinity",
} as const satisfies Readonly<Record<string, FactName>>;

/** A rule of the water that is planned. */
export type PlannedWaterRule = keyof typeof plannedWaters;

/** What tells of a finding about planned water which of its facts it is about: of a season the figure stands under its name. */
interface OfPlannedWater {
  readonly rule: PlannedWaterRule;
  readonly measures?: { readonly hottest?: unknown; readonly coolest?: unknown };
}

/** The fact that a finding about planned water is about: that of the season it tells of, if any. */
export function plannedWaterOf({ rule, measures = {} }: OfPlannedWater) {
  if (measures.hottest !== undefined) return "water.hottest";
  return measures.coolest === undefined ? plannedWaters[rule] : "water.coolest";
}
