import type { FactName } from "./read-fact";

/** The units of facts of a plan: those of `vivary/units`, and `1` of a share of 1. */
export type FactUnit = "cm" | "cm2" | "m2" | "1" | "degC" | "dH" | "g/kg";

/** The unit of each fact that is measured; counts, pH and words have none. */
export const factUnits: Readonly<Partial<Record<FactName, FactUnit>>> = {
  "tank.longestRun": "cm",
  "tank.footprint": "cm2",
  "tank.height": "cm",
  "tank.cover": "1",
  "tank.openWater": "1",
  "tank.openSurface": "1",
  "tank.filter.ripeArea": "m2",
  "water.temperature": "degC",
  "water.hottest": "degC",
  "water.coolest": "degC",
  "water.generalHardness": "dH",
  "water.salinity": "g/kg",
  "group.length": "cm",
};
