import { refusal } from "../errors";
import { type LengthUnit, measureOf } from "../units";
import type { TankBase } from "./base";
import type { FloorAt } from "./floor";
import { distance, size } from "./lengths";
import { bowed } from "./shapes/bowed";
import { circle } from "./shapes/circle";
import { polygon } from "./shapes/polygon";
import { rectangle } from "./shapes/rectangle";
import { sector } from "./shapes/sector";

/** A tank with upright walls, as one measures it. */
export interface TankDimensions {
  readonly base: TankBase;
  /** In `unit`: from the floor to the rim (`inner`), or from under the bottom pane to the rim (`outer`). */
  readonly height: number;
  /** The unit of every length given: `mm`, `cm`, `m`, `in` or `ft`. Default `cm`. */
  readonly unit?: LengthUnit;
  /** Whether base and height were measured inside or outside the glass. Default `inner`. */
  readonly measured?: "inner" | "outer";
  /** Thickness of bottom and sides, in `unit`. Default 0: unknown, and the glass counts for nothing. */
  readonly glass?: number;
  /** How far the water stays below the rim, in `unit`. Default 0. */
  readonly waterBelowRim?: number;
}

/** What a tank measures. Always in these units, whatever unit the tank was given in. */
export interface TankGeometry {
  /** Volume of base by height as given, L. */
  readonly grossVolume: number;
  /** Volume of the water, L. */
  readonly waterVolume: number;
  /** Area of the inner floor, cm². */
  readonly footprint: number;
  /** Area of the water's surface, cm². Walls are upright, so it equals the footprint. */
  readonly waterSurface: number;
  /** The longer side of the smallest rectangle around the inner floor, cm. */
  readonly longestRun: number;
  /** The shorter side of that rectangle, cm. */
  readonly width: number;
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

/** Soda-lime float glass, kg/L (EN 572-1, from memory). */
const glassDensity = 2.5;

/**
 * Volumes, areas, lengths and masses of a tank with upright walls.
 *
 * Inner measures are taken as they are. From outer ones every side moves inward by `glass` and the floor up by
 * `glass`, and what is left is exact for each shape: neighbouring sides meet where their inner faces meet.
 * Around a given inner base the panes stand outside in the same way. The smallest rectangle is the one of least
 * area, at any angle; of several equally small, as around a right-angled triangle, the most nearly square.
 *
 * Water counts as fresh at 25 °C, 0.99705 kg/L; panes as soda-lime float glass, 2.5 kg/L.
 *
 * @throws InvalidInputError if a length is not finite or (but for `glass`, `waterBelowRim` and `bow`) not above
 * zero, or is beyond 0.1 mm to 1 km; if a polygon has fewer than three corners or its sides cross or touch; if a
 * sector's angle is not above 0 and up to 360; if `bow` exceeds half the length; if `glass` leaves no floor, no
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
  const { base, unit = "cm", measured = "inner", glass = 0, waterBelowRim = 0 } = tank;
  if (measureOf(unit) !== "length") throw refusal("unit", "a unit of length", unit);
  if (measured !== "inner" && measured !== "outer") {
    throw refusal("measured", '"inner" or "outer"', measured);
  }
  const floorAt = floorOf(base, unit);
  const height = size(tank.height, "height", unit);
  const pane = distance(glass, "glass", unit);
  const gap = distance(waterBelowRim, "waterBelowRim", unit);

  const outerInset = measured === "outer" ? 0 : -pane;
  const innerInset = measured === "outer" ? pane : 0;
  const outer = floorAt(outerInset);
  const inner = floorAt(innerInset);
  const outerHeight = height - outerInset;
  const innerHeight = height - innerInset;
  if (!outer || !inner || innerHeight <= 0) {
    throw refusal("glass", "a thickness that leaves every side and the height a length", glass);
  }
  const depth = innerHeight - gap;
  if (depth <= 0) throw refusal("waterBelowRim", "less than the inner height", waterBelowRim);

  const given = measured === "outer" ? outer : inner;
  const waterVolume = litres(inner.area * depth);
  const waterMass = waterVolume * waterDensity;
  const paneVolume = litres(outer.area * outerHeight - inner.area * innerHeight);
  return {
    grossVolume: litres(given.area * height),
    waterVolume,
    footprint: inner.area,
    waterSurface: inner.area,
    longestRun: inner.longestRun,
    width: inner.width,
    waterMass,
    filledMass: waterMass + paneVolume * glassDensity,
  };
}

function floorOf(base: TankBase, unit: LengthUnit): FloorAt {
  const shape: unknown = base?.shape;
  switch (base?.shape) {
    case "rectangle":
      return rectangle(base, unit);
    case "polygon":
      return polygon(base, unit);
    case "circle":
      return circle(base, unit);
    case "sector":
      return sector(base, unit);
    case "bowed":
      return bowed(base, unit);
  }
  throw refusal("base.shape", "rectangle, polygon, circle, sector or bowed", shape);
}

function litres(cubicCentimetres: number): number {
  return cubicCentimetres / 1000;
}
