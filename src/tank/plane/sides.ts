import type { Point } from "./point";

/** A straight side of a polygon. */
export interface Side {
  readonly from: Point;
  readonly to: Point;
}

/** The sides of a polygon in order, from each corner to the next and from the last to the first. */
export function sides(points: readonly Point[]): Side[] {
  return points.map((from, index) => ({ from, to: points[(index + 1) % points.length] ?? from }));
}
