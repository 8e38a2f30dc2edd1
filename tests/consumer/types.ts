// Types of every subpath as a consumer may use them: no DOM, and the declarations themselves checked.
import type { SpeciesProfile } from "vivary";
import { allSpecies, findSpecies, speciesById } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import type { Verdict } from "vivary/compatibility";
import type { allRecords, Citation } from "vivary/evidence";
import danioRecord from "vivary/evidence/danio-rerio";
import type { nitrogenLoad } from "vivary/load";
import type { Plan } from "vivary/plan";
import type { Range } from "vivary/ranges";
import type { describe } from "vivary/report";
import type { Problem } from "vivary/schema";
import { loadSpecies, type SearchNames, suggestSpecies } from "vivary/search";
import en from "vivary/search/en";
import type { SpeciesRecord, TraitPath } from "vivary/species";
import type { OfficialRequirement } from "vivary/standards";
import type { OverlapRow } from "vivary/tables";
import type { tankGeometry } from "vivary/tank";
import type { convert } from "vivary/units";
import type { oxygenSaturation } from "vivary/water";

/** One of each. */
export interface Used {
  readonly plan: Plan;
  readonly verdict: Verdict;
  readonly records: typeof allRecords;
  readonly citation: Citation;
  readonly nitrogen: ReturnType<typeof nitrogenLoad>;
  readonly range: Range;
  readonly text: ReturnType<typeof describe>;
  readonly problem: Problem;
  readonly path: TraitPath;
  readonly requirement: OfficialRequirement;
  readonly overlap: OverlapRow;
  readonly geometry: ReturnType<typeof tankGeometry>;
  readonly length: ReturnType<typeof convert>;
  readonly oxygen: ReturnType<typeof oxygenSaturation>;
}

export const profiles: readonly (SpeciesProfile | undefined)[] = [
  danioRerio,
  speciesById("danio-rerio"),
  ...findSpecies("zebra danio"),
  ...allSpecies,
];
export const english: SearchNames = en;
export const loaded: Promise<SpeciesProfile> = loadSpecies(suggestSpecies("zebra d")[0]?.id ?? "danio-rerio");
export const record: SpeciesRecord = danioRecord;
