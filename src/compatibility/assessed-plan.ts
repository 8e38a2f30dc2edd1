import { finite, InvalidInputError, objectOf, oneOf, whole, within } from "../errors";
import { type TankGeometry, tankGeometry } from "../tank";
import { currents, from } from "./currents";
import { type AssessedParty, partyOfGroup, withKin } from "./party";
import type { Plan, PlannedTank, PlannedWater } from "./plan";

/** A plan as rules see it: checked, its tank measured, its groups as parties. */
export interface AssessedPlan {
  readonly tank: PlannedTank;
  readonly geometry: TankGeometry;
  /** Run and floor by the sizes given, glass included: the sizes by which tanks are sold and space is advised. */
  readonly nominal: Pick<TankGeometry, "longestRun" | "footprint">;
  /** As planned; salinity 0 if it is not given. */
  readonly water: PlannedWater & { readonly salinity: number };
  readonly parties: readonly AssessedParty[];
}

/** A plan checked and measured. */
export function assessedPlan(plan: Plan): AssessedPlan {
  const { tank, water, groups } = objectOf(plan, "plan");
  if (!Array.isArray(groups) || groups.length === 0) {
    throw new InvalidInputError("groups", "at least one group of animals", groups);
  }
  checkFurnishing(tank);
  return {
    tank,
    geometry: tankGeometry(tank),
    nominal: tankGeometry({ ...tank, measured: "inner" }),
    water: checkedWater(water),
    parties: withKin(groups.map((group, index) => partyOfGroup(group, `groups[${index}]`))),
  };
}

const share = { min: 0, max: 1 };
const anyAmount = { min: 0, max: Number.MAX_VALUE };

function checkFurnishing(tank: PlannedTank): void {
  const { cover, openWater, lid, plants, flow, filter, sightBreaks } = objectOf(tank, "tank");
  if (cover !== undefined) within(cover, "tank.cover", share);
  if (openWater !== undefined) within(openWater, "tank.openWater", share);
  if (sightBreaks !== undefined) whole(sightBreaks, "tank.sightBreaks", 0);
  if (lid !== undefined && typeof lid !== "boolean")
    throw new InvalidInputError("tank.lid", "true or false", lid);
  if (plants !== undefined) oneOf(plants, ["none", "planted", "grown-in"], "tank.plants");
  if (flow !== undefined) checkFlow(flow);
  if (filter !== undefined) {
    const { mediaArea, age } = objectOf(filter, "tank.filter");
    within(mediaArea, "tank.filter.mediaArea", anyAmount, "m2");
    within(age, "tank.filter.age", anyAmount, "d");
  }
}

function checkFlow(flow: NonNullable<PlannedTank["flow"]>): void {
  const { calmest, strongest } = objectOf(flow, "tank.flow");
  oneOf(calmest, currents, "tank.flow.calmest");
  oneOf(strongest, from(calmest), "tank.flow.strongest");
}

/** What a plan may say of water; outside these spans it is a slip of unit. */
const domains = {
  temperature: { min: -2, max: 60, unit: "°C" },
  hottest: { min: -2, max: 60, unit: "°C" },
  coolest: { min: -2, max: 60, unit: "°C" },
  pH: { min: 0, max: 14, unit: "" },
  generalHardness: { min: 0, max: 500, unit: "°dH" },
  carbonateHardness: { min: 0, max: 500, unit: "°dH" },
  salinity: { min: 0, max: 300, unit: "g/kg" },
} as const;

function checkedWater(water: PlannedWater): AssessedPlan["water"] {
  for (const name of ["temperature", "pH", "generalHardness"] as const) {
    finite(objectOf(water, "water")[name], `water.${name}`);
  }
  for (const [name, { unit, ...domain }] of Object.entries(domains)) {
    const value = water[name as keyof PlannedWater];
    if (value !== undefined) within(value, `water.${name}`, domain, unit);
  }
  const { salinity = 0, hottest, coolest } = water;
  if (hottest !== undefined && coolest !== undefined && hottest < coolest) {
    throw new InvalidInputError("water.hottest", `at least the coolest, ${coolest}`, hottest);
  }
  return { ...water, salinity };
}
