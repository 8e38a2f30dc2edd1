import { listOf } from "../../checks";
import { refusal } from "../../errors";
import type { LengthUnit } from "../../units";
import type { PolygonBase } from "../base";
import { type FloorAt, floor } from "../floor";
import { coordinate } from "../lengths";
import { isSimple } from "../plane/is-simple";
import { moveSides } from "../plane/move-sides";
import type { Point } from "../plane/point";
import { signedArea } from "../plane/signed-area";
import { smallestRectangle } from "../plane/smallest-rectangle";

/** How many corners a polygonal base may have: more than any tank has, few enough to measure in no time. */
export const maxPolygonCorners = 200;

export function polygon(base: PolygonBase, unit: LengthUnit): FloorAt {
  const points = counterclockwise(fromFirst(read(base.points, unit)));
  if (!isSimple(points)) {
    throw refusal(
      "base.points",
      "corners in order around the base, its sides neither crossing nor touching",
      base.points,
      "conflict",
    );
  }
  return (inset) => {
    const inside = inset === 0 ? points : moveSides(points, inset);
    return inside && floor(signedArea(inside), ...smallestRectangle(inside));
  };
}

function read(points: readonly unknown[], unit: LengthUnit): Point[] {
  const { length } = listOf(points, "base.points");
  if (length < 3) throw refusal("base.points", "at least 3 corners", length, "range");
  if (length > maxPolygonCorners) {
    throw refusal("base.points", `at most ${maxPolygonCorners} corners`, length, "too-many");
  }
  return Array.from(points, (corner, index) => {
    const subject = `base.points[${index}]`;
    if (!Array.isArray(corner) || corner.length !== 2) {
      throw refusal(subject, "a corner as [x, y]", corner);
    }
    return {
      x: coordinate(corner[0], unit, `${subject}[0]`),
      y: coordinate(corner[1], unit, `${subject}[1]`),
    };
  });
}

/** The same base with its first corner at the origin, where coordinates are short and lose no digits. */
function fromFirst(points: readonly Point[]): Point[] {
  const [origin] = points;
  return origin ? points.map(({ x, y }) => ({ x: x - origin.x, y: y - origin.y })) : [];
}

function counterclockwise(points: readonly Point[]): readonly Point[] {
  return signedArea(points) < 0 ? [...points].reverse() : points;
}
