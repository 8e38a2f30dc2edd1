import { XMLParser, XMLValidator } from "fast-xml-parser";
import { expect } from "vitest";

/** An element of a picture as another program reads it. */
export interface Seen {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** The text in it. */
  readonly text: string;
  readonly content: readonly Seen[];
}

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  trimValues: false,
  parseTagValue: false,
  htmlEntities: false,
});

type Node = Readonly<Record<string, unknown>>;

/** The root element of a picture, which must be well-formed XML. */
export function readSvg(svg: string): Seen {
  expect(XMLValidator.validate(svg)).toBe(true);
  const [root, ...more] = seenIn(parser.parse(svg) as readonly Node[]);
  expect(more).toEqual([]);
  if (!root) throw new Error("No element.");
  return root;
}

function seenIn(nodes: readonly Node[]): readonly Seen[] {
  return nodes.flatMap((node) => {
    const name = Object.keys(node).find((key) => key !== ":@" && key !== "#text");
    if (name === undefined) return [];
    const held = node[name] as readonly Node[];
    const texts = held.flatMap((child) => ("#text" in child ? [String(child["#text"])] : []));
    return [
      {
        name,
        attributes: (node[":@"] ?? {}) as Readonly<Record<string, string>>,
        text: texts.join(""),
        content: seenIn(held),
      },
    ];
  });
}

/** An element and all within it. */
export const allIn = (seen: Seen): readonly Seen[] => [seen, ...seen.content.flatMap(allIn)];

/** The elements of a class within another. */
export const ofClass = (within: Seen, name: string): readonly Seen[] =>
  allIn(within).filter(({ attributes }) => attributes.class?.split(" ").includes(name));

/** The rows of a picture. */
export const rowsOf = (svg: Seen): readonly Seen[] =>
  svg.content.filter((seen) => seen.attributes.class === "row");

/** Every point that an element is drawn through or towards. */
export function pointsOf({ name, attributes }: Seen): readonly (readonly [number, number])[] {
  const number = (key: string) => Number(attributes[key]);
  if (name === "line") {
    return [
      [number("x1"), number("y1")],
      [number("x2"), number("y2")],
    ];
  }
  if (name === "circle") {
    const [x, y, r] = [number("cx"), number("cy"), number("r")];
    return [
      [x - r, y - r],
      [x + r, y + r],
    ];
  }
  if (name === "text") return [[number("x"), number("y")]];
  if (name === "path") return pathPoints(attributes.d ?? "");
  return (attributes.points ?? "")
    .split(" ")
    .filter(Boolean)
    .map((pair) => pair.split(",").map(Number) as [number, number]);
}

/** The points of a path of the commands M, C, S, L and V, handles of curves included. */
function pathPoints(path: string): readonly (readonly [number, number])[] {
  let x = 0;
  return [...path.matchAll(/([MCSLV])([^MCSLVZ]*)/g)].flatMap(([, command, given = ""]) => {
    const numbers = given.trim().split(/\s+/).map(Number);
    if (command === "V") return numbers.map((y) => [x, y] as const);
    const points = Array.from(
      { length: numbers.length / 2 },
      (_, index) => [numbers[2 * index] ?? Number.NaN, numbers[2 * index + 1] ?? Number.NaN] as const,
    );
    x = points.at(-1)?.[0] ?? x;
    return points;
  });
}

/** How far an element reaches from left to right. */
export function extent(seen: Seen): { readonly min: number; readonly max: number } {
  const xs = allIn(seen)
    .filter(({ name }) => name !== "text" && name !== "title")
    .flatMap(pointsOf)
    .map(([x]) => x);
  return { min: Math.min(...xs), max: Math.max(...xs) };
}

/** The ticks of the upper axis: the figure that is printed, and where. */
export function ticksOf(svg: Seen): readonly { readonly figure: number; readonly x: number }[] {
  const ticks = ofClass(svg, "tick").map(({ text, attributes }) => ({
    figure: Number(text.replace(",", ".")),
    x: Number(attributes.x),
  }));
  return ticks.slice(0, ticks.length / 2);
}

/** Reads a figure off the axis, by its first and last tick. */
export function figureReader(svg: Seen): (x: number) => number {
  const ticks = ticksOf(svg);
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (!first || !last) throw new Error("No axis.");
  return (x) => first.figure + ((x - first.x) / (last.x - first.x)) * (last.figure - first.figure);
}

/** What stands at the edge of the page or beyond; letters are taken to be six tenths as wide as high. */
export function beyondThePage(svg: Seen): readonly Seen[] {
  const [, , width = 0, height = 0] = (svg.attributes.viewBox ?? "").split(" ").map(Number);
  return allIn(svg).filter((seen) =>
    boxOf(seen).some(([x, y]) => !(x >= 0 && x <= width && y >= 0 && y <= height)),
  );
}

function boxOf(seen: Seen): readonly (readonly [number, number])[] {
  if (["svg", "g", "title", "desc"].includes(seen.name)) return [];
  const points = pointsOf(seen);
  if (seen.name !== "text") return points;
  const size = Number(seen.attributes["font-size"]);
  const wide = [...seen.text].length * size * 0.5;
  const start = seen.attributes["text-anchor"] === "middle" ? -wide / 2 : 0;
  return points.flatMap(([x, y]) => [
    [x + start, y - size],
    [x + start + wide, y + size * 0.3],
  ]);
}
