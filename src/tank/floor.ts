/** The floor of a tank seen from above. */
export interface Floor {
  /** cm². */
  readonly area: number;
  /** The longer side of the smallest rectangle around it, cm. */
  readonly longestRun: number;
  /** The shorter side of that rectangle, cm. */
  readonly width: number;
}

/**
 * The floor that is left when every side of a base moves inward by `inset` cm (outward, below zero).
 * `undefined` where a side or the whole floor vanishes.
 */
export type FloorAt = (inset: number) => Floor | undefined;

/** A floor of so many cm² in a rectangle of these two sides, in cm. */
export function floor(area: number, side: number, otherSide: number): Floor {
  return { area, longestRun: Math.max(side, otherSide), width: Math.min(side, otherSide) };
}
