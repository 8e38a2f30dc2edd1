import type { Range } from "../../../ranges";
import { line } from "../page";
import { type Attributes, corners, element, title } from "../svg";
import type { Meaning } from "./range-rows";

/** Where a figure stands along a picture, infinite figures at its ends. */
export type Place = (figure: number) => number;

const open = (figure: number) => !Number.isFinite(figure);

/** A bar from end to end; an end that is open runs into a point. */
export function bar(
  { min, max }: Range,
  place: Place,
  middle: number,
  height: number,
  attributes: Attributes,
): string {
  const [from, to, half] = [place(min), place(max), height / 2];
  const tip = (x: number, inwards: number, isOpen: boolean) =>
    isOpen
      ? ([
          [x + inwards * 8, middle - half],
          [x, middle],
          [x + inwards * 8, middle + half],
        ] as const)
      : ([
          [x, middle - half],
          [x, middle + half],
        ] as const);
  const points = corners([...tip(from, 1, open(min)), ...[...tip(to, -1, open(max))].reverse()]);
  return element("polygon", { ...line, points, "stroke-linejoin": "round", ...attributes });
}

/** Brackets around what lies between two limits; an end that is open has none. */
export function brackets(
  { min, max }: Range,
  place: Place,
  middle: number,
  height: number,
): readonly string[] {
  const bracket = (figure: number, inwards: number) => {
    const x = place(figure);
    const [top, bottom] = [middle - height / 2, middle + height / 2];
    const points = corners([
      [x + inwards * 4, top],
      [x, top],
      [x, bottom],
      [x + inwards * 4, bottom],
    ]);
    return element("polyline", { ...line, class: "limit", points, "stroke-width": 1.6 });
  };
  return [...(open(min) ? [] : [bracket(min, 1)]), ...(open(max) ? [] : [bracket(max, -1)])];
}

/** How the line of a source is drawn, by what its figure means. */
const strokes: Readonly<Record<Meaning, Attributes>> = {
  kept: { "stroke-width": 1.4 },
  optimum: { "stroke-width": 3 },
  tolerated: { "stroke-width": 1.4, "stroke-dasharray": "7 3" },
  limit: { "stroke-width": 0.7, "stroke-dasharray": "1 4" },
  wild: { "stroke-width": 1.4, "stroke-dasharray": "2 3" },
  tested: { "stroke-width": 1.4, "stroke-dasharray": "8 3 2 3" },
};

/** What one source says, as a thin line with ticks at its ends; an end that is open bears the head of an arrow. */
export function sourceLine(span: Range, meaning: Meaning, place: Place, y: number, told: string): string {
  const [from, to] = [place(span.min), place(span.max)];
  const limit = meaning === "limit";
  const drawn =
    limit && (open(span.min) || open(span.max))
      ? []
      : [element("line", { ...line, x1: from, x2: to, y1: y, y2: y, ...strokes[meaning] })];
  const end = (figure: number, x: number, inwards: number) => {
    const points = open(figure)
      ? corners([
          [x + inwards * 5, y - 3],
          [x, y],
          [x + inwards * 5, y + 3],
        ])
      : corners([
          [x, y - 3.5],
          [x, y + 3.5],
        ]);
    return element("polyline", { ...line, points });
  };
  const tips = limit ? brackets(span, place, y, 8) : [end(span.min, from, 1), end(span.max, to, -1)];
  return element("g", { class: `source ${meaning}` }, [title(told), ...drawn, ...tips]);
}

/** How the bars are drawn: what all have in common, the span to keep in, the best in place of it, the best within it. */
export const bandStyle = {
  class: "shared",
  fill: "currentColor",
  "fill-opacity": 0.07,
  "stroke-dasharray": "4 3",
  "stroke-opacity": 0.7,
};
export const keptStyle = { class: "kept", fill: "currentColor", "fill-opacity": 0.22 };
export const standInStyle = {
  class: "kept stands-in",
  fill: "currentColor",
  "fill-opacity": 0,
  "stroke-dasharray": "3 2",
};
export const optimumStyle = { fill: "currentColor", stroke: "currentColor", class: "optimum" };
