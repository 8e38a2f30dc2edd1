import { objectOf, oneOf } from "../checks";
import { refusal } from "../errors";
import type { LengthUnit } from "../units";
import type { TankBase } from "./base";
import type { FloorAt, FloorMeasures } from "./floor";
import { distance, lengthDomain } from "./lengths";
import { bowed } from "./shapes/bowed";
import { circle } from "./shapes/circle";
import { polygon } from "./shapes/polygon";
import { rectangle } from "./shapes/rectangle";
import { sector } from "./shapes/sector";

/** The base of a tank with upright walls, as one measures it. */
export interface BaseDimensions {
  /** Its shape and lengths, in `unit`. */
  readonly base: TankBase;
  /** The unit of every length given: `mm`, `cm`, `m`, `in` or `ft`. Default `cm`. */
  readonly unit?: LengthUnit | undefined;
  /** Whether the lengths were measured inside or outside the glass. Default `inner`. */
  readonly measured?: "inner" | "outer" | undefined;
  /** Thickness of bottom and sides, in `unit`. Default 0: unknown, and the glass counts for nothing. */
  readonly glass?: number | undefined;
}

/** The floor of a tank inside and outside its glass, in cm and cm². */
export interface TankFloor {
  /** Within the glass. */
  readonly inner: FloorMeasures;
  /** Around the glass. */
  readonly outer: FloorMeasures;
  /** As the base was given: the inner or the outer one of these, whichever was measured. */
  readonly nominal: FloorMeasures;
}

/**
 * Area and smallest rectangle of the floor of a tank, whatever its height.
 *
 * From outer measures every side moves inward by `glass`, from inner ones outward, and what comes of it is exact for
 * each shape: neighbouring sides meet where their faces meet. The smallest rectangle is the one of least area, at any
 * angle; of several equally small, as around a right-angled triangle, the most nearly square.
 *
 * Other fields, such as the height or what else a plan says of its tank, are let be.
 *
 * @throws InvalidInputError as {@link tankGeometry} does for the base.
 *
 * @example
 * ```ts
 * import { tankFloor } from "vivary/tank";
 *
 * const base = { shape: "rectangle", length: 60, width: 30 } as const;
 * const { inner, nominal } = tankFloor({ base, measured: "outer", glass: 0.5 });
 * inner; // => { footprint: 1711, longestRun: 59, width: 29 }
 * nominal; // => { footprint: 1800, longestRun: 60, width: 30 }
 * ```
 */
export function tankFloor(tank: BaseDimensions): TankFloor {
  const { base, unit = "cm", measured = "inner", glass = 0 } = objectOf(tank, "");
  oneOf(measured, ["inner", "outer"], "measured");
  const floorAt = floorOf(base, unit);
  const pane = distance(glass, unit, "glass");

  const inner = floorAt(measured === "outer" ? pane : 0);
  const outer = floorAt(measured === "outer" ? 0 : -pane);
  if (!inner || !outer) {
    throw refusal("glass", "a thickness that leaves every side a length", glass, "conflict");
  }
  const nominal = measured === "outer" ? outer : inner;
  if (nominal.width < lengthDomain.min) {
    throw refusal("base", "a floor at least 0.1 mm wide", base, "range");
  }
  return { inner, outer, nominal };
}

function floorOf(base: TankBase, unit: LengthUnit): FloorAt {
  const shape: unknown = objectOf(base, "base").shape;
  switch (base.shape) {
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
  throw refusal("base.shape", "rectangle, polygon, circle, sector or bowed", shape, "word");
}
