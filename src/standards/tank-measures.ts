import { decimal } from "../decimal";
import type { CheckedPlan } from "../plan/inner";
import type { Range } from "../ranges";
import type { TankGeometry } from "../tank";

/** The volumes that texts speak of; both where a text does not say which. */
export type VolumeName = "gross volume" | "water volume" | "water volume to gross volume";

/** The sides that texts speak of. */
export type TankSideName = "length" | "width" | "depth" | "water depth";

/** What can be measured of a tank. */
export type TankMeasureName = VolumeName | TankSideName | "front edge" | "floor";

/** A measure of a tank with its unit. */
type TankMeasure = Range & {
  readonly of: TankMeasureName;
  readonly unit: string;
  readonly sizes: "outer" | "inner";
};

/** What the water takes of a measure, and what is given. */
type Span = readonly [inside: number, asGiven: number, unit: string];

/** The measures of a tank by name; undefined where the plan does not give the height. */
export type TankMeasures = (of: TankMeasureName) => TankMeasure | undefined;

/**
 * The measures of a planned tank. `gross volume` is base by height as given and `front edge` the longer side as given,
 * the glass included where outer sizes are given. Where texts do not say whether glass and the air below the rim
 * count, a measure runs from what the water takes to what is given.
 */
export function tankMeasures({ tank, floor, geometry, height }: CheckedPlan): TankMeasures {
  const { inner, nominal } = floor;
  const spans: Readonly<Partial<Record<TankMeasureName, Span>>> = {
    "front edge": [nominal.longestRun, nominal.longestRun, "cm"],
    length: [inner.longestRun, nominal.longestRun, "cm"],
    width: [inner.width, nominal.width, "cm"],
    floor: [inner.footprint / 10_000, nominal.footprint / 10_000, "m2"],
    ...(geometry && height !== undefined && heightMeasures(geometry, height)),
  };
  return (of) => {
    const span = spans[of];
    if (!span) return undefined;
    const [inside, asGiven, unit] = span;
    return { of, min: decimal(inside), max: decimal(asGiven), unit, sizes: tank.measured ?? "inner" };
  };
}

function heightMeasures({ waterVolume, waterSurface, grossVolume }: TankGeometry, height: number) {
  const waterDepth = (waterVolume * 1000) / waterSurface;
  return {
    "gross volume": [grossVolume, grossVolume, "L"],
    "water volume": [waterVolume, waterVolume, "L"],
    "water volume to gross volume": [waterVolume, grossVolume, "L"],
    depth: [waterDepth, height, "cm"],
    "water depth": [waterDepth, waterDepth, "cm"],
  } as const;
}
