import { defineRule } from "../../engine/rule/define-rule";

/** Standard acceleration of gravity, m/s²: exact, CGPM 1901. */
const standardGravity = 9.80665;

/** Where the height is not given nobody knows the weight: the caution is told without figures. */
export const cautionFloor = defineRule({
  id: "caution-floor",
  question: "Is the filled tank heavier than an ordinary floor is reckoned for?",
  way: "once",
  reads: ["tank.innerFootprint", "tank.waterVolume", "tank.filledMass"],
  decidesBy: ["floorForce", "floorLoad"],
  mayYield: ["advisory"],
  measures: { volume: "L", mass: "kg", load: "kN/m2" },
  judge: ({ plan, thresholds }) => {
    const mass = plan["tank.filledMass"];
    if (mass === undefined) return [{ weight: "advisory" }];
    const force = (mass * standardGravity) / 1000;
    const load = force / (plan["tank.innerFootprint"] / 10_000);
    if (force < thresholds.floorForce || load < thresholds.floorLoad) return [];
    return [{ weight: "advisory", measures: { volume: plan["tank.waterVolume"], mass, load } }];
  },
});
