import { atLeastZero, finite, inDomain, objectOf, oneOf, refusal, wholeNumber } from "../errors";
import * as classes from "../species/classes";
import { lengthInCm, type TankGeometry, tankGeometry } from "../tank";
import { currents, from } from "./currents";
import { type AssessedParty, partyOfGroup, withKin } from "./party";
import type { Offering, Plan, PlannedTank, PlannedWater } from "./plan";

/** A plan as rules see it: checked, its tank measured, its groups as parties. */
export interface AssessedPlan {
  readonly tank: PlannedTank;
  readonly geometry: TankGeometry;
  /** Run, width, floor and height in cm by the sizes given, glass included: those by which tanks are sold and space is advised. */
  readonly nominal: Pick<TankGeometry, "longestRun" | "width" | "footprint"> & { readonly height: number };
  /** As planned; salinity 0 if it is not given. */
  readonly water: PlannedWater & { readonly salinity: number };
  readonly parties: readonly AssessedParty[];
  /** Unknown if absent. */
  readonly offerings?: readonly Offering[];
}

/** A plan checked and measured. */
export function assessedPlan(plan: Plan): AssessedPlan {
  const { tank, water, groups, offerings } = objectOf(plan, "plan");
  if (!Array.isArray(groups) || groups.length === 0) {
    throw refusal("groups", "at least one group of animals", groups);
  }
  checkFurnishing(tank);
  return {
    tank,
    geometry: tankGeometry(tank),
    nominal: nominalSizes(tank),
    water: checkedWater(water),
    parties: withKin(groups.map((group, index) => partyOfGroup(group, `groups[${index}]`))),
    ...(offerings && { offerings: checkedOfferings(offerings) }),
  };
}

function nominalSizes(tank: PlannedTank): AssessedPlan["nominal"] {
  const { longestRun, width, footprint } = tankGeometry({ ...tank, measured: "inner" });
  return { longestRun, width, footprint, height: lengthInCm(tank.height, tank.unit, "height") };
}

function checkedOfferings(offerings: readonly Offering[]): readonly Offering[] {
  if (!Array.isArray(offerings)) throw refusal("offerings", "a list of offerings", offerings);
  for (const [index, offering] of offerings.entries()) {
    const at = `offerings[${index}]`;
    const { food, place, light, apart } = objectOf(offering, at);
    oneOf(food, Object.keys(classes.food), `${at}.food`);
    oneOf(place, Object.keys(classes.zone), `${at}.place`);
    if (light !== undefined) oneOf(light, Object.keys(classes.light), `${at}.light`);
    if (apart !== undefined && typeof apart !== "boolean")
      throw refusal(`${at}.apart`, "true or false", apart);
  }
  return offerings;
}

const share = { min: 0, max: 1 };

function checkFurnishing(tank: PlannedTank): void {
  const { cover, openWater, openSurface, lid, plants, flow, filter, sightBreaks } = objectOf(tank, "tank");
  if (cover !== undefined) inDomain(cover, "tank.cover", share);
  if (openWater !== undefined) inDomain(openWater, "tank.openWater", share);
  if (openSurface !== undefined) inDomain(openSurface, "tank.openSurface", share);
  if (sightBreaks !== undefined) wholeNumber(sightBreaks, "tank.sightBreaks", 0);
  if (lid !== undefined && typeof lid !== "boolean") throw refusal("tank.lid", "true or false", lid);
  if (plants !== undefined) oneOf(plants, ["none", "planted", "grown-in"], "tank.plants");
  if (flow !== undefined) checkFlow(flow);
  if (filter !== undefined) {
    const { mediaArea, age } = objectOf(filter, "tank.filter");
    atLeastZero(mediaArea, "tank.filter.mediaArea", "m2");
    atLeastZero(age, "tank.filter.age", "d");
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
    if (value !== undefined) inDomain(value, `water.${name}`, domain, unit);
  }
  const { salinity = 0, hottest, coolest } = water;
  if (hottest !== undefined && coolest !== undefined && hottest < coolest) {
    throw refusal("water.hottest", `at least the coolest, ${coolest}`, hottest);
  }
  return { ...water, salinity };
}
