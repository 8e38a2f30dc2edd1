import * as z from "zod";
import { classes, type Trait, type TraitPath, type TraitWay, traitTable } from "../../species";
import type { HasUnit } from "../../species/inner";
import { key, note, place } from "../bounded";
import { rulesOfStatement } from "./editor-rules";
import { exampleOf } from "./examples";
import { unitsFor } from "./units";
import { explained, oneOf } from "./words";

/** A trait in words: what it is, its unit and classes. */
export function explainTrait({ about, unit, plausible, classes }: Trait): string {
  return [
    about,
    unit && unit !== "1" && `In ${unit} unless the statement names a unit.`,
    plausible && `Figures lie between ${plausible.min} and ${plausible.max}.`,
    classes && explained(classes),
  ]
    .filter(Boolean)
    .join(" ");
}

/** The fields that every statement has beside its value. */
const core = {
  by: key.describe("A key of this record's sources, or common-practice, or curator."),
  at: place.optional().describe("Where in the source."),
  note: note
    .optional()
    .describe("What a reader should know. A note without a value leaves the trait unknown."),
  estimate: z
    .literal(true)
    .optional()
    .describe("Computed from relatives or by a model, not measured on this species."),
  adopt: note.optional().describe("Why this statement is the one to use."),
  setAside: note.optional().describe("Why this statement is not to be used."),
};

/** The fields of a statement that depend on the trait's way of resolving. */
const topics = {
  one: {},
  all: {},
  figures: {
    as: oneOf(classes.waterMeaning, "What the figure means.").optional(),
    stage: oneOf(classes.stage, "The stage it holds for; grown animals if absent.").optional(),
    precision: z
      .literal("class")
      .optional()
      .describe("The bounds are those of a handbook's class, such as soft water, not of this species."),
    endpoint: oneOf(
      classes.endpoint,
      "What ended the test of a limit, or what a tested figure was best for.",
    ).optional(),
    acclimatedAt: z
      .number()
      .min(-2)
      .max(48)
      .optional()
      .describe("The temperature that the tested animals were used to, in degC."),
    n: z.int().min(1).optional().describe("The number of animals tested."),
  },
  rooms: {},
  ages: {
    as: oneOf(classes.lengthMeaning, "What the age means.").optional(),
  },
  lengths: {
    as: oneOf(classes.lengthMeaning, "What the length means.").optional(),
    sex: oneOf(classes.sex, "The sex it was measured on; both if absent.").optional(),
    measure: oneOf(classes.lengthMeasure, "What was measured.").optional(),
  },
};

type Topics = typeof topics;
type UnitField<Path extends TraitPath> =
  HasUnit<Path> extends true ? { unit: z.ZodOptional<typeof key> } : Record<never, never>;

/** The schema of a trait's statements. */
export type StatementSchema<Path extends TraitPath, Value extends z.ZodType> = z.ZodObject<
  typeof core & Topics[TraitWay<Path>] & UnitField<Path> & { value: z.ZodOptional<Value> },
  z.core.$strict
>;

/** The schema of a trait's statements, each field with what it means. */
export function statementSchema<Path extends TraitPath, Value extends z.ZodType>(path: Path, value: Value) {
  const trait = traitTable[path];
  const { by, ...others } = core;
  const fields = {
    by,
    value: value.optional().describe(explainTrait(trait)),
    ...(trait.unit && { unit: unitField(path, trait.unit) }),
    ...topics[trait.way],
    ...others,
  };
  const described = z.strictObject(fields).meta({
    description: trait.label,
    examples: [exampleOf(path)],
    ...rulesOfStatement(path, value),
  });
  return described as z.ZodType as StatementSchema<Path, Value>;
}

/** The unit that a source tells a size in. */
const unitField = (path: TraitPath, own: string) =>
  key.optional().meta({
    description: own === "1" ? "A share has no unit." : `The source's unit, if it is not ${own}.`,
    enum: unitsFor(path),
  });
