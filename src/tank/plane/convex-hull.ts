import { between, cross, type Point } from "./point";

/** The corners of the smallest convex polygon around some points, counterclockwise (Andrew's monotone chain). */
export function convexHull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/** From the first point to the last, turning left only; without the last. */
function chain(sorted: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of sorted) {
    while (!turnsLeft(kept.at(-2), kept.at(-1), point)) kept.pop();
    kept.push(point);
  }
  return kept.slice(0, -1);
}

/** Too few points to turn count as turning left. */
function turnsLeft(a: Point | undefined, b: Point | undefined, c: Point): boolean {
  return !a || !b || cross(between(a, b), between(b, c)) > 0;
}
