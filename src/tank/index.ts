export type { BowedBase, CircleBase, Corner, PolygonBase, RectangleBase, SectorBase, TankBase } from "./base";
export { type TankDimensions, type TankGeometry, tankGeometry } from "./tank-geometry";
