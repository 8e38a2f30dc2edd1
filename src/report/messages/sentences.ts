// What sentences of any language need.
import { areaOfALitre } from "../../load/inner";
import type { FactName } from "../../plan";
import { type Figure, noLess, noMore, within } from "../figure";
import type { Messages } from "./messages";

/** A sentence with its capital. */
export const sentenceCase = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A sentence in which something stands in place of its full stop. */
export const stopped = (text: string, by: string) => text.replace(/\.(?=[^\p{L}\d]*$)/u, by);

/** A sentence in which a phrase stands but once. */
export function saidOnce(text: string, phrase: string): string {
  const [first = "", ...further] = text.split(phrase);
  return further.length > 1 ? first + phrase + further.join("") : text;
}

/** A word of the vocabulary without its hyphens. */
export const spaced = (word: string) => word.replaceAll("-", " ");

/** The scientific name that an id is made of. */
export const scientificOf = (id: string) => sentenceCase(spaced(id));

/**
 * Whether a filled tank weighs so much, a tonne, that nobody should set it up unasked: about five times the concentrated
 * load of dwellings in EN 1991-1-1, table 6.2 (from memory).
 */
export const isVeryHeavy = (total: Figure) => (total.value ?? 0) >= 1000;

/** What lies beyond the limits of a figure: `below 10 °C`, `outside 12 to 34 °C`. */
export function beyond(
  limit: Figure,
  write: (figure: Figure) => string,
  { below, above, outside }: Pick<Messages["ranges"], "below" | "above" | "outside">,
): string {
  const { min, max, unit } = limit;
  if (max === undefined) return below(write(noLess({ value: min, unit })));
  return min === undefined ? above(write(noMore({ value: max, unit }))) : outside(write(within(limit)));
}

/** Whether only the upper end of a figure is told. */
export const isUpperEnd = ({ value, min, max }: Figure = {}) =>
  value === undefined && min === undefined && max !== undefined;

/** Whether a share is all there is, so that there is no more to give. */
export const isWhole = (share: Figure | undefined) => (share?.value ?? 0) >= 1;

/** Whether a keeper can measure a length. */
export const isMeasurable = (length: Figure | undefined) => (length?.value ?? 0) >= 0.5;

/** A square as large as an area, its sides in steps of 5 cm. */
export function square(area: Figure | undefined): Figure | undefined {
  if (area?.value === undefined) return area;
  const side = Math.ceil(Math.sqrt(area.value) / 5 - 0.001) * 5;
  return { value: side, by: side, unit: "cm" };
}

/** At least a length to grow to, in steps of half a centimetre: a reader cannot measure more closely. */
export const upwards = (length: Figure | undefined): Figure | undefined =>
  length?.value === undefined ? length : { min: halfUp(length.value), unit: "cm" };

/** How much coarse foam has so much surface for certain, in whole litres. */
export const foam = (area: number): Figure =>
  noLess({ value: Math.max(1, Math.ceil(area / areaOfALitre.min - 0.001)), unit: "L" });

export const halfUp = (cm: number) => Math.ceil(cm * 2 - 0.001) / 2;

/** The facts of a plan in a word or two, and what they are part of. */
export type Things = Readonly<Record<FactName, readonly [fact: string, part: string]>>;

/** What of a plan is right: parts where nothing of them is wrong, else facts. */
export function rightThings(
  things: Things,
  right: readonly FactName[],
  wrong: ReadonlySet<FactName>,
  whole: boolean,
): readonly string[] {
  const spoilt = new Set([...wrong].map((fact) => things[fact][1]));
  const wrongThings = new Set([...wrong].map((fact) => things[fact][0]));
  const named = right.map((fact) => things[fact][whole && !spoilt.has(things[fact][1]) ? 1 : 0]);
  return [...new Set(named)].filter((thing) => !wrongThings.has(thing));
}

const bought = ["dry", "frozen", "live", "fallen-insects", "algae", "plants", "wood"];

/**
 * Choices of food in words: what to give, of which a keeper can buy or grow some, else the ways by which food reaches an
 * animal alone, and where there is none, all of it; and those ways.
 */
export function choicesOfFood(
  words: readonly (string | boolean)[],
  foods: Readonly<Record<string, string>>,
  ways: Readonly<Record<string, string>>,
): { readonly given: readonly string[]; readonly reached: readonly string[] } {
  const choices = words.map(String);
  const given = choices.filter((choice) => !Object.hasOwn(ways, choice));
  const known = bought.filter((food) => given.includes(food));
  const reached = choices.flatMap((choice) => (Object.hasOwn(ways, choice) ? (ways[choice] ?? []) : []));
  const told = known.length > 0 || reached.length > 0 ? known : given;
  return { given: told.map((food) => foods[food] ?? spaced(food)), reached };
}
