import type { PairRule, PlanRule } from "../rule";
import { actsLookAlike } from "./pair/acts-look-alike";
import { actsOthers } from "./pair/acts-others";
import { actsOwnKind } from "./pair/acts-own-kind";
import { finNipping } from "./pair/fin-nipping";
import { flow } from "./pair/flow";
import { generalHardness } from "./pair/general-hardness";
import { interbreeding } from "./pair/interbreeding";
import { ph } from "./pair/ph";
import { predation } from "./pair/predation";
import { salinity } from "./pair/salinity";
import { temperature } from "./pair/temperature";
import { cautionElectricity } from "./plan/caution-electricity";
import { cautionFloor } from "./plan/caution-floor";
import { cautionHazards } from "./plan/caution-hazards";
import { cautionLaw } from "./plan/caution-law";
import { cautionRelease } from "./plan/caution-release";
import { cautionZoonoses } from "./plan/caution-zoonoses";
import { cover } from "./plan/cover";
import { flowPlaces } from "./plan/flow-places";
import { footprint } from "./plan/footprint";
import { groupSize } from "./plan/group-size";
import { lid } from "./plan/lid";
import { longestRun } from "./plan/longest-run";
import { plants } from "./plan/plants";
import { settlingCompany } from "./plan/settling-company";
import { sexRatio } from "./plan/sex-ratio";
import { waterHardness } from "./plan/water-hardness";
import { waterPh } from "./plan/water-ph";
import { waterSalinity } from "./plan/water-salinity";
import { waterTemperature } from "./plan/water-temperature";

/** The rules about two parties, in the order in which a keeper asks. */
export const pairRules = [
  temperature,
  ph,
  generalHardness,
  salinity,
  flow,
  predation,
  actsOwnKind,
  actsLookAlike,
  actsOthers,
  finNipping,
  interbreeding,
] as const satisfies readonly PairRule[];

/** The rules about a plan, in the order in which a keeper asks. */
export const planRules = [
  waterTemperature,
  waterPh,
  waterHardness,
  waterSalinity,
  longestRun,
  footprint,
  groupSize,
  sexRatio,
  cover,
  plants,
  settlingCompany,
  lid,
  flowPlaces,
  cautionFloor,
  cautionElectricity,
  cautionHazards,
  cautionZoonoses,
  cautionLaw,
  cautionRelease,
] as const satisfies readonly PlanRule[];

/** The id of a rule of the library. */
export type RuleId = (typeof pairRules | typeof planRules)[number]["id"];
