import { isSimple } from "./is-simple";
import { between, dot, type Point, unit } from "./point";
import { type Side, sides } from "./sides";

/**
 * The polygon whose sides are those of a counterclockwise one, each moved inward by `distance` (outward, below
 * zero) and lengthened or shortened to meet its neighbours. `undefined` where a side vanishes or two sides meet
 * that are no neighbours.
 */
export function moveSides(points: readonly Point[], distance: number): readonly Point[] | undefined {
  const before = sides(points);
  const moved = before.map((side, index) => moveCorner(before.at(index - 1) ?? side, side, distance));
  const keepDirection = sides(moved).every((side, index) => {
    const old = before[index];
    return old !== undefined && dot(between(side.from, side.to), between(old.from, old.to)) > 0;
  });
  return keepDirection && isSimple(moved) ? moved : undefined;
}

/** The corner between two sides after both have moved. */
function moveCorner(incoming: Side, outgoing: Side, distance: number): Point {
  const a = inward(incoming);
  const b = inward(outgoing);
  const stretch = distance / (1 + dot(a, b));
  return { x: outgoing.from.x + stretch * (a.x + b.x), y: outgoing.from.y + stretch * (a.y + b.y) };
}

function inward({ from, to }: Side): Point {
  const { x, y } = unit(between(from, to));
  return { x: -y, y: x };
}
