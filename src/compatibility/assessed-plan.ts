import { finite, InvalidInputError, within } from "../errors";
import * as classes from "../species/classes";
import { type TankGeometry, tankGeometry } from "../tank";
import { type AssessedParty, partyOfGroup } from "./party";
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

/** The order of the currents. */
export const currents = /* @__PURE__ */ Object.keys(classes.flow);

/** A plan checked and measured. */
export function assessedPlan(plan: Plan): AssessedPlan {
  const { tank, water, groups } = plan;
  if (!Array.isArray(groups) || groups.length === 0) {
    throw new InvalidInputError("groups", "at least one group of animals", groups);
  }
  checkFurnishing(tank);
  return {
    tank,
    geometry: tankGeometry(tank),
    nominal: tankGeometry({ ...tank, measured: "inner" }),
    water: checkedWater(water),
    parties: groups.map((group, index) => partyOfGroup(group, `groups[${index}]`)),
  };
}

const share = { min: 0, max: 1 };

function checkFurnishing({ cover, openWater, lid, plants, flow, filter }: PlannedTank): void {
  if (cover !== undefined) within(cover, "tank.cover", share);
  if (openWater !== undefined) within(openWater, "tank.openWater", share);
  if (lid !== undefined && typeof lid !== "boolean")
    throw new InvalidInputError("tank.lid", "true or false", lid);
  const plantings = ["none", "planted", "grown-in"];
  if (plants !== undefined && !plantings.includes(plants)) {
    throw new InvalidInputError("tank.plants", `one of ${plantings.join(", ")}`, plants);
  }
  if (flow !== undefined) {
    const [calmest, strongest] = [currents.indexOf(flow.calmest), currents.indexOf(flow.strongest)];
    if (calmest < 0 || strongest < calmest) {
      throw new InvalidInputError("tank.flow", `calmest and strongest, of ${currents.join(" < ")}`, flow);
    }
  }
  if (filter !== undefined) {
    within(filter.mediaArea, "tank.filter.mediaArea", { min: 0, max: Number.MAX_VALUE }, "m2");
    within(filter.age, "tank.filter.age", { min: 0, max: Number.MAX_VALUE }, "d");
  }
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
  for (const name of ["temperature", "pH", "generalHardness"] as const) finite(water[name], `water.${name}`);
  for (const [name, { unit, ...domain }] of Object.entries(domains)) {
    const value = water[name as keyof PlannedWater];
    if (value !== undefined) within(value, `water.${name}`, domain, unit);
  }
  return { ...water, salinity: water.salinity ?? 0 };
}
