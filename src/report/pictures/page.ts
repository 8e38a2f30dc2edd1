import { fitted, linesOf, widthOf } from "./lettering";
import type { Scale } from "./scale";
import { type Attributes, element, escapedXml, title as titleOf } from "./svg";

/** The width of every picture, in user units. */
export const pageWidth = 760;
export const margin = 14;

/** Sizes of letters, in user units. */
export const letters = { title: 16, text: 12, small: 10 } as const;

/** Lines are drawn in the colour of the text around, so that a picture is read in print and on dark pages too. */
export const line: Attributes = { fill: "none", stroke: "currentColor", "stroke-width": 1 };

/** A line of text. */
export const words = (text: string, x: number, y: number, attributes: Attributes = {}): string =>
  element("text", { x, y, "font-size": letters.text, ...attributes }, [escapedXml(text)]);

/** Something already drawn, and how high it is. */
export interface Drawn {
  readonly parts: readonly string[];
  readonly height: number;
}

/** A picture with its heading, and what it shows in words. */
export function page(
  heading: string,
  told: readonly string[],
  drawn: readonly ((top: number) => Drawn)[],
): string {
  const shown = fitted(heading, pageWidth - 2 * margin, letters.title);
  const parts = [words(shown, margin, 26, { "font-size": letters.title, "font-weight": "bold" })];
  let height = 36;
  for (const draw of drawn) {
    const next = draw(height);
    parts.push(...next.parts);
    height += next.height;
  }
  height += margin;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      role: "img",
      viewBox: `0 0 ${pageWidth} ${Math.ceil(height)}`,
      width: pageWidth,
      height: Math.ceil(height),
      "font-family": "sans-serif",
      fill: "currentColor",
    },
    [titleOf(heading), element("desc", {}, [escapedXml(told.join(" "))]), ...parts],
  );
}

/** Sentences below the heading. */
export const sentences =
  (texts: readonly string[]) =>
  (top: number): Drawn => {
    const lines = texts.flatMap((text) => linesOf(text, pageWidth - 2 * margin, letters.text));
    return {
      parts: lines.map((text, index) => words(text, margin, top + 12 + index * 16)),
      height: lines.length * 16,
    };
  };

/** A line of figures at the ticks of a scale. */
export const axis =
  (scale: Scale, write: (figure: number) => string) =>
  (top: number): Drawn => ({
    parts: scale.ticks.map((tick) =>
      words(write(tick), scale.at(tick), top + 14, {
        class: "tick",
        "font-size": letters.small,
        "text-anchor": "middle",
      }),
    ),
    height: 20,
  });

/** Thin lines at the ticks, behind the rows. */
export const grid = (scale: Scale, top: number, bottom: number): readonly string[] =>
  scale.ticks.map((tick) => {
    const x = scale.at(tick);
    return element("line", { ...line, x1: x, x2: x, y1: top, y2: bottom, "stroke-opacity": 0.18 });
  });

/** A mark of a legend: how it is drawn in a box of 30 by 14, and what it says. */
export interface LegendEntry {
  readonly mark: (x: number, y: number) => readonly string[];
  readonly text: string;
}

/** What the marks mean, as many side by side as fit. */
export const legend =
  (entries: readonly LegendEntry[]) =>
  (top: number): Drawn => {
    const parts: string[] = [];
    let [x, y] = [margin, top + 10];
    for (const { mark, text } of entries) {
      const shown = fitted(text, pageWidth - 2 * margin - 40, letters.small);
      const width = 36 + widthOf(shown, letters.small) + 18;
      if (x > margin && x + width > pageWidth - margin) [x, y] = [margin, y + 20];
      parts.push(...mark(x, y), words(shown, x + 36, y + 11, { "font-size": letters.small }));
      x += width;
    }
    return { parts: [element("g", { class: "legend" }, parts)], height: y + 20 - top };
  };
