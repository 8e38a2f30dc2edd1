import { type Trait, type TraitPath, traitTable } from "../../species";
import { sizeFields } from "../../species/inner";
import type { RowWith } from "../table";
import { ets } from "../terms";

/** The columns that hold values, numbers apart from words. */
export const valueColumns = {
  part: {
    type: "string",
    about:
      "Which part of the value: value where it is one number, span, word or text; else the name of the part.",
    required: true,
  },
  number: { type: "number", about: "A number, in the unit.", term: ets("traitValue") },
  min: {
    type: "number",
    about: "The lower end of a span, in the unit; empty where it is open.",
    term: ets("measurementValue_min"),
  },
  max: {
    type: "number",
    about: "The upper end of a span, in the unit; empty where it is open.",
    term: ets("measurementValue_max"),
  },
  unit: {
    type: "string",
    about: "The unit of the numbers; empty for counts, pH and constants.",
    term: ets("traitUnit"),
  },
  word: {
    type: "string",
    about:
      "A word, or none where it is known that there is nothing of the sort. It is of the trait's list; of a value of several parts that list is of one of them, and the others have words of their own.",
  },
  minWord: { type: "string", about: "The least of a span of words." },
  maxWord: { type: "string", about: "The greatest of a span of words." },
  truth: { type: "boolean", about: "Whether it is so, of traits that are or are not." },
  text: { type: "string", about: "A name or a sentence." },
} as const;

/** The cells of one part of a value. */
export type ValueCells = RowWith<typeof valueColumns>;

const empty = {
  number: null,
  min: null,
  max: null,
  unit: null,
  word: null,
  minWord: null,
  maxWord: null,
  truth: null,
  text: null,
};

/** No value at all. */
export const noValue: ValueCells = { part: "value", ...empty };

/** A value of a trait by its parts, sizes in the trait's unit. The number of animals that a room is for is none. */
export function partsOf(value: unknown, path: TraitPath): readonly ValueCells[] {
  return partsAt(value, "value", traitTable[path]);
}

function partsAt(value: unknown, part: string, trait: Trait): readonly ValueCells[] {
  const unit = hasUnit(part) ? (trait.unit ?? null) : null;
  if (typeof value === "number") return [{ ...noValue, part, number: value, unit }];
  if (typeof value === "boolean") return [{ ...noValue, part, truth: value }];
  if (typeof value === "string") {
    const isWord = trait.classes !== undefined || value === "none";
    return [{ ...noValue, part, ...(isWord ? { word: value } : { text: value }) }];
  }
  if (typeof value !== "object" || value === null) return [];
  if (isSpan(value)) return [{ ...noValue, part, ...spanCells(value, unit) }];
  return Object.entries(value)
    .filter(([name]) => name !== "for")
    .flatMap(([name, held]) =>
      partsAt(held, Array.isArray(value) ? `${part}.${Number(name) + 1}` : name, trait),
    );
}

/** Sizes have the trait's unit; counts, years and constants have none. */
const hasUnit = (part: string) => ["value", "total", ...sizeFields].includes(part);

const isSpan = (value: object) => Object.keys(value).every((name) => name === "min" || name === "max");

function spanCells({ min = null, max = null }: Span, unit: string | null): Partial<ValueCells> {
  const isOfWords = typeof min === "string" || typeof max === "string";
  return isOfWords
    ? { minWord: min as string | null, maxWord: max as string | null }
    : { min: min as number | null, max: max as number | null, unit };
}

/** A span of numbers or of words. */
interface Span {
  readonly min?: unknown;
  readonly max?: unknown;
}
