import type { LengthUnit } from "../../units";
import type { CircleBase } from "../base";
import { type FloorAt, floor } from "../floor";
import { lengthInCm } from "../length-in-cm";

export function circle(base: CircleBase, unit: LengthUnit): FloorAt {
  return disc(lengthInCm(base.diameter, unit, "base.diameter") / 2);
}

/** A full circle of so many cm radius. */
export function disc(radius: number): FloorAt {
  return (inset) => {
    const inside = radius - inset;
    return inside > 0 ? floor(Math.PI * inside ** 2, 2 * inside, 2 * inside) : undefined;
  };
}
