import { givingHardness, givingPH, givingTemperature } from "../rules/shared/givings";
import type { Giving } from "../rules/shared/water";
import type { ThresholdValues } from "../threshold-values";

/** A figure of water that all animals of a tank share. */
export type WaterAxis = "temperature" | "pH" | "generalHardness" | "salinity";

interface Axis {
  /** How the rules let it give way. */
  readonly giving: (thresholds: ThresholdValues) => Giving;
  /** Below which there is no such water. */
  readonly floor: number;
}

/** Salinity gives way by nothing, and whatever is shared is room enough. */
const givingNothing: Giving = { gives: 0, least: 0, roomy: 0 };

/** The axes, in the order in which conflicts are told. */
export const axes: { readonly [Each in WaterAxis]: Axis } = {
  temperature: { giving: givingTemperature, floor: -Infinity },
  pH: { giving: givingPH, floor: -Infinity },
  generalHardness: { giving: givingHardness, floor: 0 },
  salinity: { giving: () => givingNothing, floor: 0 },
};

/** Their names. */
export const waterAxes = /* @__PURE__ */ Object.keys(axes) as readonly WaterAxis[];
