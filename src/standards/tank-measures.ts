import type { AssessedPlan } from "../compatibility";
import { decimal } from "../decimal";
import type { Range } from "../ranges";

/** The volumes that texts speak of; both where a text does not say which. */
export type VolumeName = "gross volume" | "water volume" | "water volume to gross volume";

/** The sides that texts speak of. */
export type SideName = "length" | "width" | "depth" | "water depth";

/** What can be measured of a tank. */
export type TankMeasureName = VolumeName | SideName | "front edge" | "floor";

/** A measure of a tank with its unit. */
type TankMeasure = Range & {
  readonly of: TankMeasureName;
  readonly unit: string;
  readonly sizes: "outer" | "inner";
};

/** The measures of a tank by name. */
export type TankMeasures = (of: TankMeasureName) => TankMeasure;

/**
 * The measures of a planned tank. `gross volume` is base by height as given and `front edge` the longer side as given,
 * the glass included where outer sizes are given. Where texts do not say whether glass and the air below the rim
 * count, a measure runs from what the water takes to what is given.
 */
export function tankMeasures({ tank, geometry, nominal }: AssessedPlan): TankMeasures {
  const waterDepth = (geometry.waterVolume * 1000) / geometry.waterSurface;
  const spans: Readonly<Record<TankMeasureName, readonly [inside: number, asGiven: number, unit: string]>> = {
    "gross volume": [geometry.grossVolume, geometry.grossVolume, "L"],
    "water volume": [geometry.waterVolume, geometry.waterVolume, "L"],
    "water volume to gross volume": [geometry.waterVolume, geometry.grossVolume, "L"],
    "front edge": [nominal.longestRun, nominal.longestRun, "cm"],
    length: [geometry.longestRun, nominal.longestRun, "cm"],
    width: [geometry.width, nominal.width, "cm"],
    depth: [waterDepth, nominal.height, "cm"],
    "water depth": [waterDepth, waterDepth, "cm"],
    floor: [geometry.footprint / 10_000, nominal.footprint / 10_000, "m2"],
  };
  return (of) => {
    const [inside, asGiven, unit] = spans[of];
    return { of, min: decimal(inside), max: decimal(asGiven), unit, sizes: tank.measured ?? "inner" };
  };
}
