/** A rectangle. Lengths in the tank's `unit`. */
export interface RectangleBase {
  readonly shape: "rectangle";
  readonly length: number;
  readonly width: number;
}

/** A corner of a base seen from above, in the tank's `unit`, from any origin. */
export type Corner = readonly [x: number, y: number];

/** Straight sides from corner to corner, back to the first (which is not repeated at the end). */
export interface PolygonBase {
  readonly shape: "polygon";
  /** At least three, in order around the base, either way round. */
  readonly points: readonly Corner[];
}

/** A full circle: a cylinder. Lengths in the tank's `unit`. */
export interface CircleBase {
  readonly shape: "circle";
  readonly diameter: number;
}

/** A slice of a circle: 90° is the quarter of a corner tank, 180° the half cylinder. 360° has no straight sides. */
export interface SectorBase {
  readonly shape: "sector";
  /** The length of the two straight sides, in the tank's `unit`. */
  readonly radius: number;
  /** The angle between the straight sides, in degrees, above 0 up to 360. */
  readonly angle: number;
}

/** A rectangle whose front is a circular arc. Lengths in the tank's `unit`. */
export interface BowedBase {
  readonly shape: "bowed";
  /** The straight back. */
  readonly length: number;
  /** From back to front at the ends, where the arc begins. */
  readonly width: number;
  /** What the arc adds in the middle: from 0 to half the length. */
  readonly bow: number;
}

/** The base of a tank with upright walls. */
export type TankBase = RectangleBase | PolygonBase | CircleBase | SectorBase | BowedBase;
