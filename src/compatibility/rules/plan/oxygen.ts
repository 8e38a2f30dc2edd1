import type { TraitValue as Value } from "../../../species";
import { oxygenSaturation } from "../../../water";
import type { AssessedPlan } from "../../assessed-plan";
import { from as noCalmerThan } from "../../currents";
import { defineRule } from "../../rule";
import { oxygenDemandOf, type Stock } from "../../stock";
import type { ThresholdName } from "../../thresholds";

const limits = {
  low: "oxygenForLow",
  ordinary: "oxygenForOrdinary",
  high: "oxygenForHigh",
} as const satisfies Record<Value<"water.oxygenNeed">, ThresholdName>;

const movedSurface = { on: "tank.flow.strongest", is: noCalmerThan("gentle") } as const;

/**
 * On the hottest night water holds least oxygen and fish use most. If what it holds lasts through the night without any
 * exchange, nothing is said; else the surface must be moved. Air breathers need a surface they can reach.
 */
export const oxygen = defineRule({
  id: "oxygen",
  question: "Does it get enough oxygen on the hottest night, with the whole stock?",
  way: "each-group",
  weighs: true,
  needs: { from: ["water.oxygenNeed", "water.airBreathing"] },
  decidesBy: ["oxygenForLow", "oxygenForOrdinary", "oxygenForHigh", "nightHours", "openSurface"],
  mayYield: ["restricting"],
  judge: ({ from, plan, stock, thresholds }) => {
    const { kind } = from["water.airBreathing"];
    if (kind === "obligate") {
      const condition = { on: "tank.openSurface", within: { min: thresholds.openSurface } } as const;
      return [{ weight: "restricting", measures: { air: { value: kind } }, watchFor: "gasping", condition }];
    }
    const need = from["water.oxygenNeed"];
    const { hours, ...night } = nightOf(plan, stock, thresholds[limits[need]]);
    const short = hours < thresholds.nightHours && kind === "none";
    if (!short && need !== "high") return [];
    const measures = {
      ...night,
      need: { value: need },
      ...(short && { hours: { value: hours, unit: "h" } }),
    };
    return [{ weight: "restricting", measures, watchFor: "gasping", condition: movedSurface }];
  },
});

/** What the water holds when it is hottest, and how long that lasts without exchange until the limit is reached. */
function nightOf({ water, geometry }: AssessedPlan, stock: Stock, limit: number) {
  const temperature = water.hottest ?? water.temperature;
  const saturation = oxygenSaturation({ temperature, salinity: water.salinity });
  const demand = oxygenDemandOf(stock, temperature);
  const stored = Math.max(saturation - limit, 0) * geometry.waterVolume;
  return {
    hours: demand > 0 ? stored / demand : Number.POSITIVE_INFINITY,
    temperature: { value: temperature, unit: "degC" },
    saturation: { value: saturation, unit: "mg/L" },
    limit: { value: limit, unit: "mg/L" },
  };
}
