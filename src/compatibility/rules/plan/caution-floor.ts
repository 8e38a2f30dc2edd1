import { ownRule } from "../../engine/rule/own-rule";

/** Standard acceleration of gravity, m/s²: exact, CGPM 1901. */
const standardGravity = 9.80665;

/** What glass, gravel and stand add to the water, and the pane where it is counted: common practice, a quarter. */
const allTold = 1.25;

/**
 * Is the filled tank heavier than an ordinary floor is reckoned for?
 *
 * Where the height is not given nobody knows the weight: from a floor of 5000 cm² on it may be told, without figures.
 */
export const cautionFloor = /* @__PURE__ */ ownRule({
  id: "caution-floor",
  way: "once",
  reads: ["tank.innerFootprint", "tank.waterVolume", "tank.filledMass"],
  decidesBy: ["floorForce", "floorLoad", "floorUnknownHeight"],
  mayYield: ["advisory"],
  measures: { volume: "L", mass: "kg", total: "kg", load: "kN/m2" },
  judge: ({ plan, thresholds }) => {
    const mass = plan["tank.filledMass"];
    if (mass === undefined)
      return plan["tank.innerFootprint"] < thresholds.floorUnknownHeight ? [] : [{ weight: "advisory" }];
    const force = (allTold * mass * standardGravity) / 1000;
    const load = force / (plan["tank.innerFootprint"] / 10_000);
    if (force < thresholds.floorForce || load < thresholds.floorLoad) return [];
    const total = Math.round((allTold * mass) / 10) * 10;
    return [{ weight: "advisory", measures: { volume: plan["tank.waterVolume"], mass, total, load } }];
  },
});
