import type { FactName, PlannedTank } from "../../plan";
import type { PlanReadings } from "../../plan/inner";
import type { MoveKind } from "./move";

/** With which move a keeper changes what a rule or a condition reads of a plan; what no move changes has none. */
const kinds = {
  "tank.longestRun": "tank",
  "tank.footprint": "tank",
  "tank.height": "tank",
  "tank.width": "tank",
  "tank.innerFootprint": "tank",
  "tank.heightWithoutWater": "tank",
  "tank.waterVolume": "tank",
  "tank.filledMass": "tank",
  "tank.lid": "lid",
  "tank.cover": "cover",
  "tank.openWater": "cover",
  "tank.openSurface": "cover",
  "tank.sightBreaks": "cover",
  "tank.plants": "cover",
  "tank.substrate": "ground",
  "tank.hides": "ground",
  "tank.flow.calmest": "current",
  "tank.flow.strongest": "current",
  "tank.filter.ripeArea": "filter",
  "tank.filter.age": "filter",
  "water.temperature": "water",
  "water.hottest": "water",
  "water.coolest": "water",
  "water.pH": "water",
  "water.generalHardness": "water",
  "water.carbonateHardness": "water",
  "water.salinity": "water",
  "water.statedSalinity": "water",
  offerings: "feeding",
  jurisdiction: undefined,
  "group.count": "numbers",
  "group.males": "numbers",
  "group.females": "numbers",
  "group.pairs": "numbers",
  "group.femalesPerMale": "numbers",
  "group.sex": "numbers",
  "group.length": "entry",
  "group.grown": "entry",
  "group.form": "form",
  "group.longFins": "form",
  "group.company": "company",
  "group.offerings": "feeding",
} as const satisfies Readonly<Record<FactName | keyof PlanReadings, MoveKind | undefined>>;

/** The kind of the move that changes a fact or another reading of a plan. */
export const kindOf = (name: FactName | keyof PlanReadings): MoveKind | undefined => kinds[name];

/** The kind of the move that changes a field of the tank. */
export const kindOfField = {
  base: "tank",
  height: "tank",
  unit: "tank",
  measured: "tank",
  glass: "tank",
  waterBelowRim: "tank",
  lid: "lid",
  flow: "current",
  cover: "cover",
  openWater: "cover",
  openSurface: "cover",
  sightBreaks: "cover",
  plants: "cover",
  substrate: "ground",
  hides: "ground",
  filter: "filter",
} as const satisfies Readonly<Record<keyof PlannedTank, MoveKind>>;

/** The kinds of the moves that are about one group. */
export const ofGroups: ReadonlySet<MoveKind> = new Set(["entry", "numbers", "form", "rehome"]);
