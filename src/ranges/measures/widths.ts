import { refusal } from "../../errors";
import { ends } from "../ends";
import type { PartialRange, Range } from "../range";

/** The widths of two ranges and of what they share; of boxes over several axes, the products. */
export interface Widths {
  /** Above 0. */
  readonly a: number;
  /** Above 0. */
  readonly b: number;
  /** From 0 to the lesser of both. */
  readonly shared: number;
}

/** How a measure of overlap follows from widths: from 0, where nothing is shared, to 1. */
export type WidthFormula = (widths: Widths) => number;

/** Of ranges that lie apart, by whatever widths: they share nothing. */
export const apart: Widths = { a: 1, b: 1, shared: 0 };

/** A measure of overlap of two ranges, by the one rule that says where measures have a value. */
export function measured(a: PartialRange, b: PartialRange, formula: WidthFormula): number | undefined {
  const widths = widthsOf(a, b);
  return widths && formula(widths);
}

/**
 * The widths that the measures of two ranges follow from: {@link apart} where they lie apart, whatever an open end or a
 * width of zero; `undefined` where they meet and one is one-sided or has no width.
 */
export function widthsOf(a: PartialRange, b: PartialRange): Widths | undefined {
  const first = ends(a, "a");
  const second = ends(b, "b");
  const shared = Math.min(first.max, second.max) - Math.max(first.min, second.min);
  if (shared < 0) return apart;
  if (!isClosed(first) || !isClosed(second)) return undefined;
  const widths = { a: first.max - first.min, b: second.max - second.min, shared };
  if (!Number.isFinite(widths.a + widths.b))
    throw refusal("ranges", "widths of less than 1.8e308 together", [a, b], "range");
  return widths.a > 0 && widths.b > 0 ? widths : undefined;
}

const isClosed = ({ min, max }: Range) => min !== -Infinity && max !== Infinity;

/** The widths of two boxes: apart where any axis keeps them apart, `undefined` where an axis has none. */
export function boxWidths(axes: readonly (Widths | undefined)[]): Widths | undefined {
  if (axes.includes(apart)) return apart;
  return axes.reduce(
    (box, axis) => box && axis && { a: box.a * axis.a, b: box.b * axis.b, shared: box.shared * axis.shared },
    { a: 1, b: 1, shared: 1 },
  );
}
