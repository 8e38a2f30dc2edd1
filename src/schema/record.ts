import * as z from "zod";
import * as classes from "../species/classes";
import { type Trait, traitTable, type Way } from "../species/traits";
import type { TraitPath } from "../species/types";
import { values } from "./values";

const text = z.string().min(1);
const oneOf = (of: Readonly<Record<string, string>>, description: string) =>
  z.enum(Object.keys(of)).describe(`${description} ${explain(of)}`);

/** The classes of a trait, each with its sentence. */
function explain(of: Readonly<Record<string, string>>): string {
  return Object.entries(of)
    .map(([name, sentence]) => `${name}: ${sentence}`)
    .join(" ");
}

/** A trait in words: what it is, its unit and classes. */
function explainTrait({ about, unit, classes }: Trait): string {
  return [
    about,
    unit && unit !== "1" && `In ${unit} unless the statement names a unit.`,
    classes && explain(classes),
  ]
    .filter(Boolean)
    .join(" ");
}

type Fields = Readonly<Record<string, z.ZodType>>;

/** The fields of a statement that depend on the trait's way of resolving. */
const fieldsOfWay: Readonly<Record<Way, Fields>> = {
  one: {},
  all: {},
  figures: {
    as: oneOf(classes.waterMeaning, "What the figure means."),
    stage: oneOf(classes.stage, "The stage it holds for; grown animals if absent."),
  },
  lengths: {
    as: oneOf(classes.lengthMeaning, "What the length means."),
    sex: oneOf(classes.sex, "The sex it was measured on; both if absent."),
    measure: oneOf(classes.lengthMeasure, "What was measured."),
  },
};

const optional = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, field.optional()]));

/** A field of a trait's statements in words: what it means itself, or else the trait. */
export function explainField(trait: Trait, field = "value"): string {
  return fieldsOfWay[trait.way][field]?.description ?? explainTrait(trait);
}

function statement(path: TraitPath, value: z.ZodType) {
  const trait = traitTable[path];
  return z
    .strictObject({
      by: text.describe("A key of this record's sources, or common-practice, or curator."),
      value: value.optional().describe(explainTrait(trait)),
      ...(trait.unit && { unit: text.optional().describe(`The source's unit, if it is not ${trait.unit}.`) }),
      ...optional(fieldsOfWay[trait.way]),
      at: text.optional().describe("Where in the source."),
      note: text
        .optional()
        .describe("What a reader should know. A note without a value leaves the trait unknown."),
      adopt: text.optional().describe("Why this statement is the one to use."),
      setAside: text.optional().describe("Why this statement is not to be used."),
    })
    .describe(trait.label);
}

/** The sections with their traits; all may be absent. */
const sections = Object.fromEntries(
  Object.entries(values).map(([section, traits]) => [
    section,
    z
      .strictObject(
        Object.fromEntries(
          Object.entries(traits).map(([name, value]) => {
            const path = `${section}.${name}` as TraitPath;
            return [
              name,
              z.array(statement(path, value)).min(1).optional().describe(explainTrait(traitTable[path])),
            ];
          }),
        ),
      )
      .optional(),
  ]),
);

const names = z
  .record(
    z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, "a language tag such as en or pt-BR"),
    z.array(text).min(1),
  )
  .describe("Vernacular names by language (BCP 47), the commonest first.");

const slug = z.string().regex(/^[a-z]+(-[a-z0-9]+)+$/, "lower-case words joined by hyphens");
const formId = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case words joined by hyphens");

const source = z.strictObject({
  cite: text.describe("The name of a file in data/sources, without .json."),
  at: text.optional().describe("Page, row or address within the source."),
  memory: z.literal(true).optional().describe("The values were recalled; the source was not read."),
  root: text.optional().describe("The source this one copies from."),
});

/** One file of `data/species`. Derives from `values`; the type is `SpeciesRecord`. */
export const recordSchema = z.strictObject({
  $schema: z.string().optional(),
  id: slug.describe("The accepted name in lower case, words joined by hyphens."),
  taxonomy: z.strictObject({
    name: z.string().regex(/^[A-Z][a-z]+( [a-z-]+)+$/, "a scientific name such as Danio rerio"),
    authority: text,
    family: text,
    order: text,
    kind: oneOf(classes.kind, "What sort of animal it is."),
    synonyms: z.array(text).min(1).optional(),
    note: text.optional(),
  }),
  names,
  identifiers: z
    .record(z.string().regex(/^[a-z][A-Za-z]*$/, "the name of a database in camel case"), text)
    .optional(),
  sources: z.record(z.string().regex(/^[a-z][a-z0-9-]*$/, "lower-case letters, digits and hyphens"), source),
  ...sections,
  forms: z.record(formId, z.strictObject({ names, ...sections })).optional(),
});
