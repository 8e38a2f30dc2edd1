/** A point or a vector in the plane, in cm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The vector from `a` to `b`. */
export function between(a: Point, b: Point): Point {
  return { x: b.x - a.x, y: b.y - a.y };
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/** Twice the area of the triangle of two vectors, above zero if `b` lies to the left of `a`. */
export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

/** The vector scaled to length one. */
export function unit(vector: Point): Point {
  const length = Math.hypot(vector.x, vector.y);
  return { x: vector.x / length, y: vector.y / length };
}
