/** A rectangle. */
export interface RectangleBase {
  /** Tells this shape from the others. */
  readonly shape: "rectangle";
  /** One side, in the tank's `unit`. */
  readonly length: number;
  /** The other side, in the tank's `unit`; it may be the longer. */
  readonly width: number;
}

/** A corner of a base seen from above, in the tank's `unit`, from any origin. */
export type Corner = readonly [x: number, y: number];

/** Straight sides from corner to corner, back to the first (which is not repeated at the end). */
export interface PolygonBase {
  /** Tells this shape from the others. */
  readonly shape: "polygon";
  /** At least three and at most {@link maxPolygonCorners}, in the tank's `unit`, in order around the base, either way round. */
  readonly points: readonly Corner[];
}

/** A full circle: a cylinder. */
export interface CircleBase {
  /** Tells this shape from the others. */
  readonly shape: "circle";
  /** From wall to wall through the middle, in the tank's `unit`. */
  readonly diameter: number;
}

/** A slice of a circle: 90° is the quarter of a corner tank, 180° the half cylinder. 360° has no straight sides. */
export interface SectorBase {
  /** Tells this shape from the others. */
  readonly shape: "sector";
  /** The length of the two straight sides, in the tank's `unit`. */
  readonly radius: number;
  /** The angle between the straight sides, in degrees, above 0 up to 360. */
  readonly angle: number;
}

/** A rectangle whose front is a circular arc. */
export interface BowedBase {
  /** Tells this shape from the others. */
  readonly shape: "bowed";
  /** The straight back, in the tank's `unit`. */
  readonly length: number;
  /** From back to front at the ends, where the arc begins, in the tank's `unit`. */
  readonly width: number;
  /** What the arc adds in the middle, in the tank's `unit`: from 0 to half the length. */
  readonly bow: number;
}

/** The base of a tank with upright walls. */
export type TankBase = RectangleBase | PolygonBase | CircleBase | SectorBase | BowedBase;
