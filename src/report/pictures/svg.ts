import { oneLine } from "../layout";

/** What an element says of itself; numbers are coordinates in user units. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element with what stands in it, which is SVG already. */
export function element(name: string, attributes: Attributes, content: readonly string[] = []): string {
  const said = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined
      ? []
      : [` ${key}="${typeof value === "number" ? hundredths(value) : escapedXml(value)}"`],
  );
  const start = `<${name}${said.join("")}`;
  return content.length > 0 ? `${start}>${content.join("")}</${name}>` : `${start}/>`;
}

const marks: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

/** Text that XML shows as it is, on one line, without characters that XML does not hold. */
export const escapedXml = (text: string): string =>
  oneLine(text).replaceAll(/[&<>"']/g, (mark) => marks[mark] ?? mark);

/** What is told of an element to those who point at it or cannot see it. */
export const title = (text: string): string => element("title", {}, [escapedXml(text)]);

/** Corners of a shape or a line. */
export const corners = (points: readonly (readonly [x: number, y: number])[]): string =>
  points.map((point) => point.map(hundredths).join(",")).join(" ");

const hundredths = (value: number) => Math.round(value * 100) / 100;
