import { refusal } from "../errors";
import type { FloorMeasures } from "./floor";
import { lengthInCm } from "./length-in-cm";
import { distance } from "./lengths";
import { type BaseDimensions, tankFloor } from "./tank-floor";

/** A tank with upright walls, as one measures it. */
export interface TankDimensions extends BaseDimensions {
  /** In `unit`: from the floor to the rim (`inner`), or from under the bottom pane to the rim (`outer`). */
  readonly height: number;
  /** How far the water stays below the rim, in `unit`. Default 0. */
  readonly waterBelowRim?: number | undefined;
}

/**
 * What a tank measures, in these units whatever unit it was given in. `footprint`, `longestRun` and `width` are those of the
 * inner floor; the facts `tank.footprint` and `tank.longestRun` of a plan are those of the floor as given, the `nominal` one
 * of {@link tankFloor}.
 */
export interface TankGeometry extends FloorMeasures {
  /** Volume of base by height as given, L. */
  readonly grossVolume: number;
  /** Volume of the water, L. */
  readonly waterVolume: number;
  /** Area of the water's surface, cm². Walls are upright, so it equals the footprint. */
  readonly waterSurface: number;
  /** Mass of the water, kg. */
  readonly waterMass: number;
  /**
   * Mass of the water and of the bottom and side panes, kg; of the water alone where no `glass` is given. Gravel,
   * rocks, lid, braces, devices and the stand come on top.
   */
  readonly filledMass: number;
}

/** Fresh water at 25 °C, kg/L (IAPWS-95: 0.9970476). */
const waterDensity = 0.99705;

/** Soda-lime float glass, kg/L (EN 572-1, as makers of glass quote it). */
const glassDensity = 2.5;

/**
 * Volumes, areas, lengths and masses of a tank with upright walls.
 *
 * Inner measures are taken as they are. From outer ones every side moves inward by `glass` and the floor up by
 * `glass`. Around a given inner base the panes stand outside in the same way. For the floor see {@link tankFloor}.
 *
 * The tank of a plan is taken as it is: fields that are not about its measures are let be, and so is a misspelt one, which
 * a plan refuses.
 *
 * Water counts as fresh at 25 °C, 0.99705 kg/L; panes as soda-lime float glass, 2.5 kg/L.
 *
 * @throws InvalidInputError if a length is not finite or (but for `glass`, `waterBelowRim` and `bow`) not above
 * zero, or is beyond 0.1 mm to 1 km, or the floor is under 0.1 mm wide; if a polygon has fewer than three corners or
 * more than {@link maxPolygonCorners}, or its sides cross or touch; if a sector's angle is not above 0 and up to 360; if `bow` exceeds half the length; if `glass` leaves no floor, no
 * height or no length of some side; if `waterBelowRim` leaves no water; if shape, `unit` or `measured` is unknown.
 *
 * @example
 * ```ts
 * import { tankGeometry } from "vivary/tank";
 *
 * const tank = tankGeometry({
 *   base: { shape: "rectangle", length: 60, width: 30 },
 *   height: 36,
 *   measured: "outer",
 *   glass: 0.5,
 *   waterBelowRim: 2,
 * });
 * tank.grossVolume; // => 64.8
 * tank.waterVolume; // => 57.3185
 * tank.longestRun; // => 59
 * tank.filledMass; // ≈ 67.3
 *
 * const corner = tankGeometry({ base: { shape: "sector", radius: 24, angle: 90 }, height: 20, unit: "in" });
 * corner.waterVolume; // ≈ 148
 * tankGeometry({ base: { shape: "circle", diameter: 0 }, height: 40 }); // throws
 * ```
 */
export function tankGeometry(tank: TankDimensions): TankGeometry {
  const { inner, outer, nominal } = tankFloor(tank);
  const { unit = "cm", measured, glass = 0, waterBelowRim = 0 } = tank;
  const height = lengthInCm(tank.height, unit, "height");
  const pane = distance(glass, unit, "glass");

  const innerHeight = measured === "outer" ? height - pane : height;
  const outerHeight = measured === "outer" ? height : height + pane;
  if (innerHeight <= 0)
    throw refusal("glass", "a thickness that leaves the height a length", glass, "conflict");
  const depth = innerHeight - distance(waterBelowRim, unit, "waterBelowRim");
  if (depth <= 0) throw refusal("waterBelowRim", "less than the inner height", waterBelowRim, "conflict");

  const waterVolume = litres(inner.footprint * depth);
  const waterMass = waterVolume * waterDensity;
  const paneVolume = litres(outer.footprint * outerHeight - inner.footprint * innerHeight);
  return {
    ...inner,
    grossVolume: litres(nominal.footprint * height),
    waterVolume,
    waterSurface: inner.footprint,
    waterMass,
    filledMass: waterMass + paneVolume * glassDensity,
  };
}

function litres(cubicCentimetres: number): number {
  return cubicCentimetres / 1000;
}
