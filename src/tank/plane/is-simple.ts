import { between, cross, dot, type Point } from "./point";
import { type Side, sides } from "./sides";

/** Whether the sides of a polygon meet only where one ends and the next begins. */
export function isSimple(points: readonly Point[]): boolean {
  const all = sides(points);
  const last = all.length - 1;
  return all.every((side, index) =>
    all.slice(index + 1).every((other, offset) => {
      if (offset === 0) return turns(side, other);
      if (index === 0 && index + 1 + offset === last) return turns(other, side);
      return !touch(side, other);
    }),
  );
}

/** Whether the next side leaves the corner without running back along this one. */
function turns(side: Side, next: Side): boolean {
  const a = between(side.from, side.to);
  const b = between(next.from, next.to);
  return cross(a, b) !== 0 || dot(a, b) > 0;
}

function touch(a: Side, b: Side): boolean {
  const ofA = [turn(b, a.from), turn(b, a.to)];
  const ofB = [turn(a, b.from), turn(a, b.to)];
  const inLine = [...ofA, ...ofB].every((sign) => sign === 0);
  return inLine ? overlap(a, b) : ofA[0] !== ofA[1] && ofB[0] !== ofB[1];
}

/** On which side of a line a point lies: 1 left, -1 right, 0 on it. */
function turn({ from, to }: Side, point: Point): number {
  return Math.sign(cross(between(from, to), between(from, point)));
}

/** Whether two sides in one line share a point. */
function overlap(a: Side, b: Side): boolean {
  return (["x", "y"] as const).every(
    (axis) =>
      Math.min(a.from[axis], a.to[axis]) <= Math.max(b.from[axis], b.to[axis]) &&
      Math.min(b.from[axis], b.to[axis]) <= Math.max(a.from[axis], a.to[axis]),
  );
}
