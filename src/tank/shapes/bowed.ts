import { refusal } from "../../errors";
import type { LengthUnit } from "../../units";
import type { BowedBase } from "../base";
import { type FloorAt, type FloorMeasures, floor } from "../floor";
import { lengthInCm } from "../length-in-cm";
import { distance } from "../lengths";

export function bowed(base: BowedBase, unit: LengthUnit): FloorAt {
  const length = lengthInCm(base.length, unit, "base.length");
  const width = lengthInCm(base.width, unit, "base.width");
  const bow = distance(base.bow, unit, "base.bow");
  if (base.bow > base.length / 2) {
    throw refusal("base.bow", "at most half the length", base.bow, "conflict");
  }
  return (inset) => bowedInside(length / 2, width, bow, inset);
}

/** Its sides moved inward, a bowed floor is a bowed floor again: the arc keeps its centre. */
function bowedInside(half: number, width: number, bow: number, inset: number): FloorMeasures | undefined {
  const insideHalf = half - inset;
  const insideBow = bowOfInnerArc(half, bow, inset);
  const insideWidth = width + bow - 2 * inset - insideBow;
  if (!(insideHalf > 0 && insideWidth > 0)) return undefined;
  const area = 2 * insideHalf * insideWidth + segmentArea(insideHalf, insideBow);
  return floor(area, 2 * insideHalf, insideWidth + insideBow);
}

/**
 * Radius less the distance from centre to chord, once the radius is `inset` shorter and half the chord too.
 * Reckoned by curvature, one over the radius, so that a flat front (curvature zero) is no exception.
 */
function bowOfInnerArc(half: number, bow: number, inset: number): number {
  const curvature = (2 * bow) / (half ** 2 + bow ** 2);
  const radius = 1 - inset * curvature; // this and the next in radii of the given arc
  const toChord = Math.sqrt(
    ((half - bow) ** 2 / (half ** 2 + bow ** 2)) * (1 + curvature * (half - 2 * inset)),
  );
  return (curvature * (half - inset) ** 2) / (radius + toChord);
}

/** The area between an arc and its chord. */
function segmentArea(halfChord: number, bow: number): number {
  const steepness = bow / halfChord;
  if (steepness < 0.01) {
    // A series, since the closed formula below loses its digits on a flat arc.
    return (4 / 3) * halfChord * bow * (1 + steepness ** 2 / 5 - steepness ** 4 / 35);
  }
  const radius = (halfChord ** 2 + bow ** 2) / (2 * bow);
  const angle = 4 * Math.atan(steepness);
  return (radius ** 2 * (angle - Math.sin(angle))) / 2;
}
