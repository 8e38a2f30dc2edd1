import type { TraitValue } from "../../../species";
import type { ThresholdName } from "../../threshold-values";

/** The threshold that says down to which oxygen an animal of each need may come, mg/L. */
export const oxygenLimits = {
  low: "oxygenForLow",
  ordinary: "oxygenForOrdinary",
  high: "oxygenForHigh",
} as const satisfies Record<TraitValue<"water.oxygenNeed">, ThresholdName>;
