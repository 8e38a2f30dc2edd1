import type { FactUnit } from "../../../plan";
import type { PartialRange } from "../../../ranges";
import { statedIn } from "../../../ranges/inner";
import type { Basis, classes } from "../../../species";

/** The unit of a measured figure; `count` and `pH` are without one. */
export type MeasureUnit = FactUnit | "L" | "kg" | "mg/L" | "mg/d" | "h" | "d" | "kN/m2" | "count" | "pH";

/** The words that a measure may be answered with, by kind: those of traits, and some that only findings use. */
export type Words = { readonly [Kind in keyof typeof classes]: keyof (typeof classes)[Kind] } & {
  readonly basis: Basis;
  /** What an animal does to plants. */
  readonly plantHarm: "eats" | "uproots" | "digs";
  /** By what an animal takes another for one of its own. */
  readonly likeness: "markings" | "build";
};

/** A kind of words. */
export type WordKind = keyof Words;

/** What a rule says that one of its measures is: a figure in a unit, a word of a kind or a list of them, or a text. */
export type MeasureKind = MeasureUnit | WordKind | readonly [WordKind] | "text";

/** The measures that a rule declares, by name. */
export type MeasureKinds = Readonly<Record<string, MeasureKind>>;

/** A number or a range with its unit; without unit for counts and pH. */
export type Quantity =
  | { readonly value: number; readonly unit?: MeasureUnit }
  | (PartialRange & { readonly unit?: MeasureUnit });

/** A measure as a finding carries it. */
export type FindingMeasure<Kind extends MeasureKind = MeasureKind> = Kind extends MeasureUnit
  ? Quantity
  : { readonly value: Given<Kind> };

/** The measures of a finding, as the rule declared them; each may be absent. */
export type MeasuresOf<Kinds> = {
  readonly [Name in keyof Kinds]?: Kinds[Name] extends MeasureKind ? FindingMeasure<Kinds[Name]> : never;
};

/** A measure as a rule gives it: a figure without its unit, which it has declared. */
export type Given<Kind> = Kind extends MeasureUnit
  ? number | PartialRange
  : Kind extends WordKind
    ? Words[Kind]
    : Kind extends readonly [infer Each extends WordKind]
      ? readonly Words[Each][]
      : string;

/** The measures that a rule gives with an answer; each may be absent. */
export type GivenMeasures<Kinds> = { readonly [Name in keyof Kinds]?: Given<Kinds[Name]> | undefined };

/** What a rule gave, with the units that it declared. */
export function measured(kinds: MeasureKinds, given: Readonly<Record<string, unknown>>) {
  const measures: Record<string, FindingMeasure> = {};
  for (const name of Object.keys(given)) {
    const [kind, value] = [kinds[name], given[name]];
    if (kind !== undefined && value !== undefined) measures[name] = withUnit(value, kind);
  }
  return measures;
}

function withUnit(value: unknown, kind: MeasureKind): FindingMeasure {
  const unit = kind === "count" || kind === "pH" ? undefined : kind;
  if (typeof value === "number") return (unit === undefined ? { value } : { value, unit }) as FindingMeasure;
  if (Array.isArray(value)) return { value: [...value] } as FindingMeasure;
  if (typeof value === "string") return { value };
  return statedIn(value as PartialRange, unit) as FindingMeasure;
}
