/**
 * Tanks with upright walls: volumes, floor, water and weight from the lengths a keeper measures, inside or outside the
 * glass, for bases that are rectangles, polygons, circles, slices of a circle or bowed. Lengths may be given in any
 * unit; results are in cm, cm², L and kg.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export type { BowedBase, CircleBase, Corner, PolygonBase, RectangleBase, SectorBase, TankBase } from "./base";
export type { FloorMeasures } from "./floor";
export { lengthInCm } from "./length-in-cm";
export { maxPolygonCorners } from "./shapes/polygon";
export { type BaseDimensions, type TankFloor, tankFloor } from "./tank-floor";
export { type TankDimensions, type TankGeometry, tankGeometry } from "./tank-geometry";
