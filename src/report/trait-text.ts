import type { PartialRange } from "../ranges";
import {
  type AdultLength,
  type Figures,
  type TraitPath,
  traitTable,
  type TraitValue as Value,
} from "../species";
import type { Quantities } from "./units";

/** A resolved value of any trait in words. */
export function traitText(path: TraitPath, value: unknown, quantities: Quantities): string {
  const { unit, way } = traitTable[path];
  const size = (number: number) => quantities.text({ value: number, ...(unit && { unit }) });
  const span = (range: PartialRange) => quantities.text({ ...range, ...(unit && { unit }) });
  if (way === "figures") return figuresText(value as Figures<PartialRange>, span);
  if (way === "lengths")
    return (value as readonly AdultLength[]).map((length) => lengthText(length, size)).join("; ");
  if (way === "all") {
    const items = value as readonly unknown[];
    return items.length > 0 ? items.map((item) => itemText(path, item, size)).join("; ") : "none";
  }
  return itemText(path, value, size);
}

type Size = (number: number) => string;

function figuresText(
  { kept, standIn, ...others }: Figures<PartialRange>,
  span: (range: PartialRange) => string,
) {
  const further = Object.entries(others).flatMap(([meaning, range]) =>
    range ? [`${meaning} ${span(range)}`] : [],
  );
  return [...(standIn ? [] : [span(kept)]), ...further].join("; ");
}

function lengthText({ length, measure, as, sex }: AdultLength, size: Size): string {
  const of = measure === "unstated" ? "measure unstated" : measure;
  return `${size(length)} ${of} (${[as, sex].filter(Boolean).join(", ")})`;
}

/** The traits whose values have fields, each in words. */
const writers: { readonly [Path in TraitPath]?: (value: Item<Path>, size: Size) => string } = {
  "origin.conservation": ({ status, year }) => [status, year && `(${year})`].filter(Boolean).join(" "),
  "size.lengthWeight": ({ a, b }) => `${a} × length ^ ${b}`,
  "water.flow": ({ min, max }) => (min === max ? min : `${min} to ${max}`),
  "water.airBreathing": ({ kind, from }) => [kind, from && `from ${from}`].filter(Boolean).join(" "),
  "space.baseLength": (needed, size) => `${size(needed.least)} for ${needed.for}`,
  "space.footprint": (needed, size) => `${size(needed.least)} for ${needed.for}`,
  "space.territory": (held, size) =>
    held === "none" ? held : `${size(held.area)}, ${held.zone}, held by ${holders[held.holder]}`,
  "social.group": ({ least, avoid }) =>
    [`at least ${least}`, avoid && `not ${avoid.min} to ${avoid.max}`].filter(Boolean).join(", "),
  "appearance.looks": ({ tag, sex }) => [tag, sex && `(${sex})`].filter(Boolean).join(" "),
  "temperament.acts": ({ doer, does, target, when, from }) =>
    [doer, does, target, when && when !== "always" && `(${when})`, from && `from ${from}`]
      .filter(Boolean)
      .join(" "),
  "predation.eats": ({ prey, greatest }, size) =>
    [prey, greatest && `up to ${size(greatest)}`].filter(Boolean).join(" "),
};

const holders = { male: "each male", female: "each female", pair: "a pair", each: "each animal" } as const;

/** One value, or one of a list. */
type Item<Path extends TraitPath> = Value<Path> extends readonly (infer One)[] ? One : Value<Path>;

function itemText(path: TraitPath, item: unknown, size: Size): string {
  const write = writers[path] as ((value: unknown, size: Size) => string) | undefined;
  if (write) return write(item, size);
  if (typeof item === "number") return size(item);
  return typeof item === "boolean" ? (item ? "yes" : "no") : String(item);
}
