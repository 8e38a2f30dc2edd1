/** What the floor of a tank measures, seen from above. */
export interface FloorMeasures {
  /** Its area, cm². */
  readonly footprint: number;
  /** The longer side of the smallest rectangle around it, cm. */
  readonly longestRun: number;
  /** The shorter side of that rectangle, cm. */
  readonly width: number;
}

/**
 * The floor that is left when every side of a base moves inward by `inset` cm (outward, below zero).
 * `undefined` where a side or the whole floor vanishes.
 */
export type FloorAt = (inset: number) => FloorMeasures | undefined;

/** A floor of so many cm² in a rectangle of these two sides, in cm. */
export function floor(footprint: number, side: number, otherSide: number): FloorMeasures {
  return { footprint, longestRun: Math.max(side, otherSide), width: Math.min(side, otherSide) };
}
