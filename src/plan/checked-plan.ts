import { InvalidInputError, type Problem } from "../errors";
import { type TankFloor, type TankGeometry, tankFloor, tankGeometry } from "../tank";
import { convert } from "../units";
import { formConflicts, groupConflicts, idConflicts, tankConflicts, waterConflicts } from "./conflicts";
import { type CheckedParty, partiesOf, partiesOfGroups } from "./party";
import type { Offering, Party, Plan, PlannedTank, PlannedWater } from "./plan";
import { partyShape, planShape } from "./plan-shape";
import { profileProblems } from "./profile-problems";
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
  /** As planned; salinity 0 if it is not given. */
  readonly water: PlannedWater & { readonly salinity: number };
  readonly parties: readonly CheckedParty[];
  /** Unknown if absent. */
  readonly offerings?: readonly Offering[];
}

/** Two kinds of animals that were checked, as the parties of a pair. */
export function checkedPair(a: Party, b: Party): readonly [CheckedParty, CheckedParty] {
  const problems = Object.entries({ a, b }).flatMap(([name, party]) => partyProblems(party, name));
  if (problems.length > 0) throw new InvalidInputError(problems);
  return partiesOf([a, b]) as [CheckedParty, CheckedParty];
}

function partyProblems(party: Party, name: string): readonly Problem[] {
  const ofShape = shapeProblems(partyShape(profileProblems), party, [name]);
  return ofShape.length > 0 ? ofShape : formConflicts(party, [name]);
}

/**
 * A plan checked and measured.
 *
 * @throws InvalidInputError with everything that is wrong with it.
 */
export function checkedPlan(plan: Plan): CheckedPlan {
  const problems = planProblems(plan);
  if (problems.length > 0) throw new InvalidInputError(problems);
  const { tank, water = {}, groups, offerings } = plan;
  const { height } = tank;
  return {
    tank,
    floor: tankFloor(tank),
    ...(height !== undefined && {
      geometry: tankGeometry({ ...tank, height }),
      height: convert(height, tank.unit ?? "cm", "cm"),
    }),
    water: { ...water, salinity: water.salinity ?? 0 },
    parties: partiesOfGroups(groups),
    ...(offerings && { offerings }),
  };
}

/** Everything wrong with a plan whose species are profiles. */
function planProblems(plan: Plan): readonly Problem[] {
  const ofShape = shapeProblems(planShape(profileProblems), plan);
  return [...ofShape, ...conflictsBeside(ofShape, plan)];
}

/** What cannot be true together, in the parts of a plan that have their shape. */
export function conflictsBeside(ofShape: readonly Problem[], plan: Plan): readonly Problem[] {
  const isSound = (...part: readonly (string | number)[]) =>
    !ofShape.some(({ path }) => path.every((key, index) => index >= part.length || key === part[index]));
  return [
    ...(isSound("tank") ? tankConflicts(plan.tank) : []),
    ...(isSound("water") && plan.water ? waterConflicts(plan.water) : []),
    ...(isSound("groups", -1)
      ? plan.groups.flatMap((group, index) =>
          isSound("groups", index) ? groupConflicts(group, ["groups", index]) : [],
        )
      : []),
    ...(isSound("groups") ? idConflicts(plan.groups) : []),
  ];
}
