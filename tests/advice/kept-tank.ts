import type { PlannedTank } from "../../src/plan";

/** A tank in which nothing is amiss for most. */
export const keptTank: PlannedTank = {
  base: { shape: "rectangle", length: 120, width: 50 },
  height: 50,
  lid: true,
  cover: 0.4,
  openWater: 0.5,
  openSurface: 0.5,
  sightBreaks: 4,
  substrate: "sand",
  hides: { caves: 4, wood: 3, leaves: 10 },
  plants: "planted",
  flow: { calmest: "still", strongest: "moderate" },
  filter: { mediaArea: 20, age: 200 },
};
