import { decimal } from "../decimal";
import { InvalidInputError, type Problem } from "../errors";
import { once } from "../made-once";
import { lengthInCm, type TankFloor, type TankGeometry, tankFloor, tankGeometry } from "../tank";
import {
  countConflicts,
  flowConflicts,
  formConflicts,
  idConflicts,
  lengthConflicts,
  measureConflicts,
  shareConflicts,
  waterConflicts,
} from "./conflicts";
import { type CheckedParty, partiesOf, partiesOfGroups } from "./party";
import type { Group, Offering, Party, Plan, PlannedTank, PlannedWater } from "./plan";
import { profileProblems } from "./profile-problems";
import { partyShape } from "./shape/party-shape";
import { groupsShape, planShape } from "./shape/plan-shape";
import type { ProblemPath } from "./shape/shape";
import { shapeProblems } from "./shape/shape-problems";

/** A plan that was checked: its tank measured, its groups as parties. */
export interface CheckedPlan {
  readonly tank: PlannedTank;
  /** The inner floor, and the floor by the sizes given, glass included: those by which tanks are sold and space is advised. */
  readonly floor: TankFloor;
  /** Volumes and masses; absent where the plan gives no height. */
  readonly geometry?: TankGeometry;
  /** As given, cm. */
  readonly height?: number;
  /** How much of a height as given is rim and bottom pane, cm. */
  readonly heightWithoutWater: number;
  readonly water: PlannedWater;
  readonly parties: readonly CheckedParty[];
  /** Unknown if absent. */
  readonly offerings?: readonly Offering[];
  /** The lawgivers whose laws are told; all of them counted if absent. */
  readonly jurisdiction?: readonly string[];
}

/** Two kinds of animals that were checked, as the parties of a pair. */
export function checkedPair(a: Party, b: Party): readonly [CheckedParty, CheckedParty] {
  const problems = [...partyProblems(a, "a"), ...partyProblems(b, "b")];
  if (problems.length > 0) throw new InvalidInputError(problems);
  return partiesOf([a, b]) as [CheckedParty, CheckedParty];
}

function partyProblems(party: Party, name: string): readonly Problem[] {
  const ofShape = shapeProblems(partyShape(profileProblems), party, [name]);
  return ofShape.length > 0 ? ofShape : [...formConflicts(party, [name]), ...lengthConflicts(party, [name])];
}

/**
 * A plan checked and measured.
 *
 * @throws InvalidInputError with everything that is wrong with it.
 */
export function checkedPlan(plan: Plan): CheckedPlan {
  refuseUnsound(plan);
  return measuredPlan(plan);
}

/**
 * A plan checked and measured that may still be without animals.
 *
 * @throws InvalidInputError with everything that is wrong with it beside that.
 */
export function checkedPlanToFill(plan: Plan): CheckedPlan {
  const { groups }: { readonly groups?: unknown } = Object(plan);
  refuseUnsound(plan, Array.isArray(groups) && groups.length === 0 ? groups : undefined);
  return measuredPlan(plan);
}

/**
 * @param sound - Groups with which nothing is wrong, and of which none can be changed.
 * @throws InvalidInputError with everything that is wrong with a plan.
 */
export function refuseUnsound(plan: Plan, sound?: Plan["groups"]): void {
  const problems = sound !== undefined && plan.groups === sound ? problemsBeside(plan) : planProblems(plan);
  if (problems.length > 0) throw new InvalidInputError(problems);
}

/**
 * A plan of which is known that nothing is wrong with it, measured.
 *
 * @param parties - Its groups as parties, where they are known.
 */
export function measuredPlan(plan: Plan, parties = partiesOfGroups(plan.groups)): CheckedPlan {
  const { tank, water = {}, offerings, jurisdiction } = plan;
  const { height } = tank;
  return {
    tank,
    floor: tankFloor(tank),
    ...(height !== undefined && {
      geometry: tankGeometry({ ...tank, height }),
      height: decimal(lengthInCm(height, tank.unit)),
    }),
    heightWithoutWater: heightWithoutWater(tank),
    water,
    parties,
    ...(offerings && { offerings }),
    ...(jurisdiction && jurisdiction.length > 0 && { jurisdiction }),
  };
}

const heightWithoutWater = ({ unit, measured, glass = 0, waterBelowRim = 0 }: PlannedTank): number =>
  (waterBelowRim + (measured === "outer" ? glass : 0)) * lengthInCm(1, unit);

const shapeOfPlan = /* @__PURE__ */ once(() => planShape(groupsShape(profileProblems)));
const shapeBesideGroups = /* @__PURE__ */ once(() => planShape({ is: "checked", check: () => [] }));

/** Everything wrong with a plan whose species are profiles. */
function planProblems(plan: Plan): readonly Problem[] {
  const ofShape = shapeProblems(shapeOfPlan(), plan);
  return [...ofShape, ...conflictsBeside(ofShape, plan)];
}

/** Everything wrong with a plan beside its groups. */
function problemsBeside(plan: Plan): readonly Problem[] {
  const ofShape = shapeProblems(shapeBesideGroups(), plan);
  return [...ofShape, ...conflictsBeside(ofShape, { ...plan, groups: [] })];
}

/** What cannot be true together, of the parts of a plan that have their shape. */
export function conflictsBeside(ofShape: readonly Problem[], plan: Plan): readonly Problem[] {
  const isSound = (part: ProblemPath) =>
    !ofShape.some(({ path }) => path.every((key, index) => index >= part.length || key === part[index]));
  const areSound = (part: ProblemPath, fields: readonly string[]) =>
    ofShape.length === 0 || fields.every((field) => isSound([...part, field]));
  const ofGroup = (group: Group, path: ProblemPath) => [
    ...(areSound(path, counts) ? countConflicts(group, path) : []),
    ...(areSound(path, ["species", "form"]) ? formConflicts(group, path) : []),
    ...(areSound(path, ["species", "length"]) ? lengthConflicts(group, path) : []),
  ];
  const groups = isSound(["groups", "list"]) ? plan.groups : [];
  const idOf = (group: Group, index: number) => (isSound(["groups", index, "id"]) ? group.id : undefined);
  return [
    ...(isSound(["tank", "flow"]) ? flowConflicts(plan.tank) : []),
    ...(areSound(["tank"], shares) ? shareConflicts(plan.tank) : []),
    ...(areSound(["tank"], measures) ? measureConflicts(plan.tank) : []),
    ...(areSound(["water"], seasons) ? waterConflicts(plan.water ?? {}) : []),
    ...groups.flatMap((group, index) => ofGroup(group, ["groups", index])),
    ...idConflicts(groups.map(idOf)),
  ];
}

const counts = ["males", "females", "unsexed", "juveniles"];
const measures = ["base", "height", "unit", "measured", "glass", "waterBelowRim"];
const shares = ["cover", "openWater"];
const seasons = ["coolest", "temperature", "hottest"];
