import { decimal } from "../../decimal";
import type { PartialRange } from "../../ranges";

/** Both ends of a span, infinite where open; crossed where nothing is left of it. */
export interface Ends {
  readonly min: number;
  readonly max: number;
}

/** A span with both its ends. */
export const endsOf = ({ min, max }: PartialRange, floor: number): Ends => ({
  min: min ?? floor,
  max: max ?? Number.POSITIVE_INFINITY,
});

/** What all spans share. */
export const sharedBy = (spans: readonly Ends[]): Ends =>
  spans.reduce((one, other) => ({ min: Math.max(one.min, other.min), max: Math.min(one.max, other.max) }), {
    min: Number.NEGATIVE_INFINITY,
    max: Number.POSITIVE_INFINITY,
  });

/** What is left of a span where the water moves so far either way. */
export const movedWithin = ({ min, max }: Ends, swing: number): Ends => ({
  min: decimal(min + swing),
  max: decimal(max - swing),
});

/** How wide it is; below zero where its ends are crossed. */
export const widthOf = ({ min, max }: Ends): number => max - min;
