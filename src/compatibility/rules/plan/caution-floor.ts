import { defineRule } from "../../rule";

/** Standard acceleration of gravity, m/s²: exact, CGPM 1901. */
const gravity = 9.80665;

export const cautionFloor = defineRule({
  id: "caution-floor",
  question: "Is the filled tank heavier than an ordinary floor is reckoned for?",
  way: "once",
  decidesBy: ["floorForce", "floorLoad"],
  mayYield: ["advisory"],
  judge: ({ plan: { geometry }, thresholds }) => {
    const squareMetres = geometry.footprint / 10_000;
    const force = (geometry.filledMass * gravity) / 1000;
    const load = force / squareMetres;
    if (force < thresholds.floorForce || load < thresholds.floorLoad) return [];
    const measures = {
      volume: { value: geometry.waterVolume, unit: "L" },
      mass: { value: geometry.filledMass, unit: "kg" },
      load: { value: load, unit: "kN/m2" },
    };
    return [{ weight: "advisory", measures }];
  },
});
