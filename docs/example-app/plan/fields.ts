import type { Texts } from "../texts/texts";
import { type Draft, type Path, valueAt } from "./draft";
import type { Quantity } from "./quantities";

/** A list of words that a field may be answered with. */
export type WordList =
  | "shape"
  | "ground"
  | "flow"
  | "planting"
  | "temper"
  | "food"
  | "zone"
  | "light"
  | "lawgiver"
  | "yesOrNo";

/** One thing that a plan may say. */
export interface Field {
  readonly path: Path;
  readonly label: keyof Texts["labels"];
  readonly asks: { readonly number: Quantity } | { readonly words: WordList };
}

/** Fields that answer one question together. */
export interface FieldSet {
  readonly legend: keyof Texts["labels"];
  readonly fields: readonly Field[];
}

const number = (path: Path, label: Field["label"], quantity: Quantity = "plain"): Field => ({
  path,
  label,
  asks: { number: quantity },
});
const words = (path: Path, label: Field["label"], list: WordList): Field => ({
  path,
  label,
  asks: { words: list },
});

/** The measures of each shape of a floor; one drawn by its corners keeps them. */
const measures = {
  rectangle: ["length", "width"],
  bowed: ["length", "width", "bow"],
  circle: ["diameter"],
  sector: ["radius", "angle"],
  polygon: [],
} as const;

/** Whether something is the name of a shape. */
export const isShape = (name: string): name is keyof typeof measures => Object.hasOwn(measures, name);

/** The floor of the tank. */
export function floorFields({ tank: { base } }: Draft): FieldSet {
  const sizes = measures[base.shape].map((measure) =>
    number(["tank", "base", measure], measure, measure === "angle" ? "plain" : "length"),
  );
  return { legend: "floor", fields: [words(["tank", "base", "shape"], "shape", "shape"), ...sizes] };
}

/** A floor of another shape, with those of its measures that the old one has. */
export const reshaped = (base: Draft["tank"]["base"], shape: keyof typeof measures) => ({
  shape,
  ...Object.fromEntries(measures[shape].map((measure) => [measure, valueAt(base, [measure])])),
});

/** What else there is to say of the tank. */
export const tankFields: readonly Field[] = [
  number(["tank", "height"], "height", "length"),
  words(["tank", "lid"], "lid", "yesOrNo"),
  words(["tank", "substrate"], "substrate", "ground"),
  words(["tank", "plants"], "plants", "planting"),
  number(["tank", "cover"], "cover", "share"),
  number(["tank", "openWater"], "openWater", "share"),
  number(["tank", "openSurface"], "openSurface", "share"),
  number(["tank", "sightBreaks"], "sightBreaks"),
  words(["jurisdiction"], "jurisdiction", "lawgiver"),
];

/** What belongs together in a tank. */
export const tankSets: readonly FieldSet[] = [
  {
    legend: "hides",
    fields: (["caves", "shells", "wood", "leaves", "rocks"] as const).map((kind) =>
      number(["tank", "hides", kind], kind),
    ),
  },
  {
    legend: "flow",
    fields: [
      words(["tank", "flow", "calmest"], "calmest", "flow"),
      words(["tank", "flow", "strongest"], "strongest", "flow"),
    ],
  },
  {
    legend: "filter",
    fields: [
      number(["tank", "filter", "mediaArea"], "mediaArea", "media"),
      number(["tank", "filter", "age"], "age", "days"),
    ],
  },
];

/** The water. */
export const waterFields: readonly Field[] = [
  number(["water", "temperature"], "temperature", "temperature"),
  number(["water", "pH"], "pH"),
  number(["water", "generalHardness"], "generalHardness", "hardness"),
  number(["water", "carbonateHardness"], "carbonateHardness", "hardness"),
  number(["water", "salinity"], "salinity", "salinity"),
  number(["water", "hottest"], "hottest", "temperature"),
  number(["water", "coolest"], "coolest", "temperature"),
];

/** How many there are of a group. */
export const countFields = (group: number): FieldSet => ({
  legend: "count",
  fields: (["males", "females", "unsexed", "juveniles"] as const).map((count) =>
    number(["groups", group, count], count),
  ),
});

/** What else there is to say of a group. */
export const groupFields = (group: number): readonly Field[] => [
  number(["groups", group, "length"], "bodyLength", "length"),
  words(["groups", group, "temper"], "temper", "temper"),
  words(["groups", group, "raises"], "raises", "yesOrNo"),
];

/** One food as it is given. */
export const offeringFields = (offering: number): readonly Field[] => [
  words(["offerings", offering, "food"], "food", "food"),
  words(["offerings", offering, "place"], "place", "zone"),
  words(["offerings", offering, "light"], "light", "light"),
  words(["offerings", offering, "apart"], "apart", "yesOrNo"),
];
