import { convexHull } from "./convex-hull";
import { between, cross, dot, type Point, unit } from "./point";
import { sides } from "./sides";

/** Areas this close, relative to each other, count as equal. */
const rounding = 1e-9;

/**
 * The two sides of the rectangle of least area around a polygon. One of its sides lies along a side of the
 * convex hull (Freeman & Shapira 1975), so those are tried. Of equal ones, as around a right-angled triangle,
 * the most nearly square.
 */
export function smallestRectangle(points: readonly Point[]): [number, number] {
  const hull = convexHull(points);
  return sides(hull)
    .map(({ from, to }) => rectangleAlong(unit(between(from, to)), hull))
    .reduce((best, next) => (isBetter(next, best) ? next : best));
}

function rectangleAlong(direction: Point, points: readonly Point[]): [number, number] {
  return [
    extent(points.map((point) => dot(direction, point))),
    extent(points.map((point) => cross(direction, point))),
  ];
}

function extent(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
}

function isBetter(next: [number, number], best: [number, number]): boolean {
  const ratio = (next[0] * next[1]) / (best[0] * best[1]);
  if (Math.abs(ratio - 1) > rounding) return ratio < 1;
  return Math.max(...next) < Math.max(...best);
}
