import { cross, type Point } from "./point";
import { sides } from "./sides";

/** The area of a polygon, above zero if its corners run counterclockwise. */
export function signedArea(points: readonly Point[]): number {
  return sides(points).reduce((sum, { from, to }) => sum + cross(from, to), 0) / 2;
}
