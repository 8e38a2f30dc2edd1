import type { ThresholdName } from "../../threshold-values";
import type { Giving } from "./water";

type Numbers<Name extends ThresholdName> = { readonly [Each in Name]: number };

/** How a temperature gives way, K. */
export const givingTemperature = (
  thresholds: Numbers<
    "givesTemperature" | "leastTemperature" | "steadyTemperature" | "endOfSeasons" | "sharedTemperature"
  >,
): Giving => ({
  gives: thresholds.givesTemperature,
  least: thresholds.leastTemperature,
  steady: thresholds.steadyTemperature,
  endShare: thresholds.endOfSeasons,
  roomy: thresholds.sharedTemperature,
});

/** How a pH gives way. */
export const givingPH = (thresholds: Numbers<"givesPH" | "leastPH" | "sharedPH">): Giving => ({
  gives: thresholds.givesPH,
  least: thresholds.leastPH,
  roomy: thresholds.sharedPH,
});

/** How a hardness gives way, °dH. */
export const givingHardness = (
  thresholds: Numbers<"givesHardness" | "leastHardness" | "sharedHardness">,
): Giving => ({
  gives: thresholds.givesHardness,
  least: thresholds.leastHardness,
  roomy: thresholds.sharedHardness,
});
