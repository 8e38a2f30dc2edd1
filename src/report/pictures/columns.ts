import { widthOf } from "./lettering";
import { margin, pageWidth } from "./page";
import { element } from "./svg";

/** Where the plot begins and ends; names stand before it, figures after it. */
export interface Columns {
  readonly from: number;
  readonly to: number;
}

/** What stands in a column. */
export interface Lettered {
  readonly text: string;
  readonly size: number;
  /** How far it is set in; not at all if absent. */
  readonly indent?: number;
}

export const columnGap = 14;
const names = { min: 70, max: 256 };
const figures = { min: 50, max: 196 };

/** Columns that hold what stands in them, as far as the plot keeps its room. */
export function columnsOf(before: readonly Lettered[], after: readonly Lettered[]): Columns {
  return {
    from: margin + widest(before, names) + columnGap,
    to: pageWidth - margin - widest(after, figures) - columnGap,
  };
}

const widest = (column: readonly Lettered[], { min, max }: typeof names) =>
  Math.min(
    max,
    column.reduce((width, { text, size, indent = 0 }) => Math.max(width, indent + widthOf(text, size)), min),
  );

/** How much room a name has. */
export const nameRoom = ({ from }: Columns): number => from - columnGap - margin;

/** How much room a figure has. */
export const figureRoom = ({ to }: Columns): number => pageWidth - margin - columnGap - to;

/** A faint line below a row. */
export const rowRule = (y: number): string =>
  element("line", {
    x1: margin,
    x2: pageWidth - margin,
    y1: y,
    y2: y,
    stroke: "currentColor",
    "stroke-opacity": 0.15,
  });
