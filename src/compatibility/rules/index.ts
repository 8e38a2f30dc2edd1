/**
 * The library's rules by name, for those who judge by some of them: a bundle holds those that are named.
 *
 * @packageDocumentation
 */
import { frozen } from "../../frozen";
import type { PairRule, PlanRule } from "../engine/rule/rule";
import { actsLookAlike } from "./pair/acts-look-alike";
import { actsOthers } from "./pair/acts-others";
import { actsOwnKind } from "./pair/acts-own-kind";
import { feedingCompetition } from "./pair/feeding-competition";
import { finNipping } from "./pair/fin-nipping";
import { flow } from "./pair/flow";
import { furnishing } from "./pair/furnishing";
import { generalHardness } from "./pair/general-hardness";
import { interbreeding } from "./pair/interbreeding";
import { mucusGrazing } from "./pair/mucus-grazing";
import { ph } from "./pair/ph";
import { planting } from "./pair/planting";
import { predation } from "./pair/predation";
import { salinity } from "./pair/salinity";
import { season } from "./pair/season";
import { shyness } from "./pair/shyness";
import { sizeAndPace } from "./pair/size-and-pace";
import { temperature } from "./pair/temperature";
import { territoryContest } from "./pair/territory-contest";
import { bothSexes } from "./plan/both-sexes";
import { carbonDioxide } from "./plan/carbon-dioxide";
import { cautionDevices } from "./plan/caution-devices";
import { cautionElectricity } from "./plan/caution-electricity";
import { cautionFloor } from "./plan/caution-floor";
import { cautionHazards } from "./plan/caution-hazards";
import { cautionLaw } from "./plan/caution-law";
import { cautionRelease } from "./plan/caution-release";
import { cautionZoonoses } from "./plan/caution-zoonoses";
import { coolSeason } from "./plan/cool-season";
import { cover } from "./plan/cover";
import { feeding } from "./plan/feeding";
import { filterNitrogen } from "./plan/filter-nitrogen";
import { flowPlaces } from "./plan/flow-places";
import { footprint } from "./plan/footprint";
import { ground } from "./plan/ground";
import { groupSize } from "./plan/group-size";
import { height } from "./plan/height";
import { hidingPlaces } from "./plan/hiding-places";
import { lid } from "./plan/lid";
import { longestRun } from "./plan/longest-run";
import { openWater } from "./plan/open-water";
import { oxygen } from "./plan/oxygen";
import { plants } from "./plan/plants";
import { plantsAtRisk } from "./plan/plants-at-risk";
import { sensitive } from "./plan/sensitive";
import { settlingCompany } from "./plan/settling-company";
import { sexRatio } from "./plan/sex-ratio";
import { territories } from "./plan/territories";
import { waterHardness } from "./plan/water-hardness";
import { waterPh } from "./plan/water-ph";
import { waterSalinity } from "./plan/water-salinity";
import { waterTemperature } from "./plan/water-temperature";
import { zones } from "./plan/zones";

/** The rules about two parties, in the order in which a keeper asks. */
export const pairRules = /* @__PURE__ */ frozen([
  temperature,
  ph,
  generalHardness,
  salinity,
  season,
  flow,
  predation,
  actsOwnKind,
  actsLookAlike,
  actsOthers,
  finNipping,
  mucusGrazing,
  territoryContest,
  sizeAndPace,
  feedingCompetition,
  shyness,
  interbreeding,
  furnishing,
  planting,
] as const satisfies readonly PairRule[]);

/** The rules about a plan, in the order in which a keeper asks. */
export const planRules = /* @__PURE__ */ frozen([
  waterTemperature,
  waterPh,
  waterHardness,
  waterSalinity,
  coolSeason,
  carbonDioxide,
  oxygen,
  filterNitrogen,
  longestRun,
  footprint,
  height,
  zones,
  territories,
  groupSize,
  sexRatio,
  bothSexes,
  cover,
  openWater,
  ground,
  hidingPlaces,
  plants,
  plantsAtRisk,
  settlingCompany,
  feeding,
  lid,
  flowPlaces,
  sensitive,
  cautionFloor,
  cautionElectricity,
  cautionDevices,
  cautionHazards,
  cautionZoonoses,
  cautionLaw,
  cautionRelease,
] as const satisfies readonly PlanRule[]);

export { actsLookAlike } from "./pair/acts-look-alike";
export { actsOthers } from "./pair/acts-others";
export { actsOwnKind } from "./pair/acts-own-kind";
export { feedingCompetition } from "./pair/feeding-competition";
export { finNipping } from "./pair/fin-nipping";
export { flow } from "./pair/flow";
export { furnishing } from "./pair/furnishing";
export { generalHardness } from "./pair/general-hardness";
export { interbreeding } from "./pair/interbreeding";
export { mucusGrazing } from "./pair/mucus-grazing";
export { ph } from "./pair/ph";
export { planting } from "./pair/planting";
export { predation } from "./pair/predation";
export { salinity } from "./pair/salinity";
export { season } from "./pair/season";
export { shyness } from "./pair/shyness";
export { sizeAndPace } from "./pair/size-and-pace";
export { temperature } from "./pair/temperature";
export { territoryContest } from "./pair/territory-contest";
export { bothSexes } from "./plan/both-sexes";
export { carbonDioxide } from "./plan/carbon-dioxide";
export { cautionDevices } from "./plan/caution-devices";
export { cautionElectricity } from "./plan/caution-electricity";
export { cautionFloor } from "./plan/caution-floor";
export { cautionHazards } from "./plan/caution-hazards";
export { cautionLaw } from "./plan/caution-law";
export { cautionRelease } from "./plan/caution-release";
export { cautionZoonoses } from "./plan/caution-zoonoses";
export { coolSeason } from "./plan/cool-season";
export { cover } from "./plan/cover";
export { feeding } from "./plan/feeding";
export { filterNitrogen } from "./plan/filter-nitrogen";
export { flowPlaces } from "./plan/flow-places";
export { footprint } from "./plan/footprint";
export { ground } from "./plan/ground";
export { groupSize } from "./plan/group-size";
export { height } from "./plan/height";
export { hidingPlaces } from "./plan/hiding-places";
export { lid } from "./plan/lid";
export { longestRun } from "./plan/longest-run";
export { openWater } from "./plan/open-water";
export { oxygen } from "./plan/oxygen";
export { plants } from "./plan/plants";
export { plantsAtRisk } from "./plan/plants-at-risk";
export { sensitive } from "./plan/sensitive";
export { settlingCompany } from "./plan/settling-company";
export { sexRatio } from "./plan/sex-ratio";
export { territories } from "./plan/territories";
export { waterHardness } from "./plan/water-hardness";
export { waterPh } from "./plan/water-ph";
export { waterSalinity } from "./plan/water-salinity";
export { waterTemperature } from "./plan/water-temperature";
export { zones } from "./plan/zones";
