import type { LengthUnit } from "../../units";
import type { RectangleBase } from "../base";
import { type FloorAt, floor } from "../floor";
import { lengthInCm } from "../length-in-cm";

export function rectangle(base: RectangleBase, unit: LengthUnit): FloorAt {
  const length = lengthInCm(base.length, unit, "base.length");
  const width = lengthInCm(base.width, unit, "base.width");

  return (inset) => {
    const inside = { length: length - 2 * inset, width: width - 2 * inset };
    if (inside.length <= 0 || inside.width <= 0) return undefined;
    return floor(inside.length * inside.width, inside.length, inside.width);
  };
}
