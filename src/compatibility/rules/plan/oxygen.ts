import { currentsFrom } from "../../../species/inner";
import { oxygenSaturation } from "../../../water";
import { oxygenDemandOf, type Stock, weighing } from "../../animals/stock";
import { wantedBy } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import { oxygenLimits } from "../shared/oxygen-limits";

const movedSurface = {
  on: "tank.flow.strongest",
  wanted: { oneOf: /* @__PURE__ */ currentsFrom("gentle") },
} as const;

/**
 * Does it get enough oxygen on the hottest night, with the whole stock?
 *
 * On the hottest night water holds least oxygen and fish use most. If what it holds lasts through the night without any
 * exchange, nothing is said; else, or where nobody knows how warm or how much water it is, the surface must be moved.
 * Air breathers need a surface they can reach; of others it is asked where the plan says that hardly any is open.
 */
export const oxygen = /* @__PURE__ */ ownRule({
  id: "oxygen",
  way: "each-group",
  sums: weighing,
  mayAdd: wantedBy,
  needs: { from: ["water.oxygenNeed", "water.airBreathing"] },
  reads: ["water.temperature", "water.hottest", "water.salinity", "tank.waterVolume", "tank.openSurface"],
  decidesBy: ["oxygenForLow", "oxygenForOrdinary", "oxygenForHigh", "nightHours", "openSurface"],
  mayYield: ["restricting"],
  measures: {
    air: "airBreathing",
    surface: "1",
    need: "oxygenNeed",
    temperature: "degC",
    saturation: "mg/L",
    limit: "mg/L",
    hours: "h",
  },
  judge: ({ from, plan, stock, thresholds }) => {
    const air = from["water.airBreathing"].kind;
    const opened = {
      weight: "restricting",
      watchFor: "gasping",
      condition: { on: "tank.openSurface", wanted: { min: thresholds.openSurface } },
    } as const;
    if (air === "obligate") return [{ measures: { air }, ...opened }];
    const surface = plan["tank.openSurface"];
    const isClosed = surface !== undefined && surface < thresholds.openSurface;
    const closed = isClosed ? [{ measures: { surface }, ...opened }] : [];
    const need = from["water.oxygenNeed"];
    const night = nightOf(
      {
        temperature: plan["water.hottest"] ?? plan["water.temperature"],
        salinity: plan["water.salinity"],
        volume: plan["tank.waterVolume"],
      },
      stock,
      thresholds[oxygenLimits[need]],
    );
    const short = air === "none" && (night.hours ?? 0) < thresholds.nightHours;
    if (!short && need !== "high") return closed;
    const measures = { ...night, need, hours: short ? night.hours : undefined };
    return [...closed, { weight: "restricting", measures, watchFor: "gasping", condition: movedSurface }];
  },
});

interface Night {
  readonly temperature: number | undefined;
  readonly salinity: number;
  readonly volume: number | undefined;
}

/** What the water holds when it is hottest, and how long that lasts without exchange until the limit is reached. */
function nightOf({ temperature, salinity, volume }: Night, stock: Stock, limit: number) {
  if (temperature === undefined || volume === undefined) return { temperature, limit };
  const saturation = oxygenSaturation({ temperature, salinity });
  const demand = oxygenDemandOf(stock, temperature);
  const stored = Math.max(saturation - limit, 0) * volume;
  const hours = demand > 0 ? stored / demand : Number.POSITIVE_INFINITY;
  return { temperature, saturation, limit, hours };
}
