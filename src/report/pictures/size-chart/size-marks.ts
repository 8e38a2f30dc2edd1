import { line } from "../page";
import { type Attributes, corners, element } from "../svg";
import type { Outline } from "./size-rows";

/** How an animal is drawn: dashed and empty where only its greatest length is known. */
const style = (onlyGreatest: boolean): Attributes => ({
  ...line,
  ...(onlyGreatest ? { "stroke-dasharray": "3 2" } : { fill: "currentColor", "fill-opacity": 0.22 }),
});

/**
 * A fish from the side with its snout at `from` and the end of its tail at `to`: the back and the belly rise to the
 * depth of the body at two fifths of its length and come together before the tail.
 */
export function fish(
  from: number,
  to: number,
  middle: number,
  { body, depth }: Outline,
  onlyGreatest: boolean,
): string {
  const half = depth / 2;
  const [tail, tips] = [half * 0.24, half * 0.62];
  const x = (share: number) => (from + body * share).toFixed(2);
  const y = (offset: number) => (middle + offset).toFixed(2);
  const path = [
    `M${x(0)} ${y(0)}`,
    `C${x(0.05)} ${y(-half * 0.55)} ${x(0.22)} ${y(-half)} ${x(0.4)} ${y(-half)}`,
    `S${x(0.86)} ${y(-tail)} ${x(1)} ${y(-tail)}`,
    `L${to.toFixed(2)} ${y(-tips)}V${y(tips)}L${x(1)} ${y(tail)}`,
    `C${x(0.86)} ${y(tail)} ${x(0.58)} ${y(half)} ${x(0.4)} ${y(half)}`,
    `S${x(0.05)} ${y(half * 0.55)} ${x(0)} ${y(0)}Z`,
  ].join("");
  const eye = { cx: from + body * 0.12, cy: middle - half * 0.18, r: Math.min(2.5, half * 0.16) };
  return element("g", { class: "outline" }, [
    element("path", { ...style(onlyGreatest), d: path, "stroke-linejoin": "round" }),
    element("circle", { ...eye, fill: "currentColor" }),
  ]);
}

/** A bar as long as the animal. */
export const lengthBar = (from: number, to: number, middle: number, onlyGreatest: boolean): string =>
  element("polygon", {
    ...style(onlyGreatest),
    class: "length",
    points: corners([
      [from, middle - 6],
      [to, middle - 6],
      [to, middle + 6],
      [from, middle + 6],
    ]),
  });

/** From the usual length to the greatest, dashed where that is of either sex. */
export const whisker = (from: number, to: number, middle: number, ofEither: boolean): string =>
  element("g", { class: "greatest" }, [
    element("line", { ...(ofEither ? style(true) : line), x1: from, x2: to, y1: middle, y2: middle }),
    element("line", { ...line, x1: to, x2: to, y1: middle - 6, y2: middle + 6 }),
  ]);

/** Where a length begins that was reckoned from another measure. */
export const reckonedFrom = (x: number, middle: number, height: number): string =>
  element("line", {
    ...line,
    class: "reckoned",
    x1: x,
    x2: x,
    y1: middle - height / 2,
    y2: middle + height / 2,
    "stroke-dasharray": "1 2",
  });
