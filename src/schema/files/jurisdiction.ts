import * as z from "zod";
import type { Jurisdiction } from "../../standards/inner";
import { listUpTo, name, note, schemaAddress, slug, speciesId } from "../bounded";
import type { Check } from "../checked";
import { fieldsOf } from "../fields";
import { heldTo } from "../held-to";

const sentence = note.regex(/^\S.*\.$/, "a sentence that ends with a full stop");
const size = z.number().positive();
const volume = z.enum(["gross volume", "water volume", "water volume to gross volume"]);
const by = z.enum(["present standard length", "present total length", "adult total length"]);
const families = listUpTo(500, name.regex(/^[A-Z][a-z]+idae$/, "the name of a family"));
const longerThan = size.describe("Adult total length in cm.");

/** Ascending lengths; only the last may be open. */
const classes = listUpTo(100, z.strictObject({ upTo: size.optional(), litres: size }))
  .refine((all) => {
    const ends = all.map(({ upTo = Number.POSITIVE_INFINITY }) => upTo);
    return ends.every((end, index) => index === 0 || end > (ends[index - 1] ?? end));
  }, "ascending lengths")
  .refine(
    (all) => all.every(({ litres }, index) => litres >= (all[index - 1]?.litres ?? 0)),
    "ascending litres",
  );

const hardness = z
  .strictObject({ min: size, max: size })
  .refine(({ min, max }) => min <= max, "min not above max");

const line = { species: speciesId, at: name.describe("Where in the article the line stands.") };
const frontEdge = z.strictObject({
  ...line,
  centimetres: size,
  beyond: z.boolean().optional().describe("The edge must be longer than that."),
});
const ownGroup = z.strictObject({
  ...line,
  least: z.int().min(2).optional().describe("Absent: not alone, and no number is stated."),
});

/** Lines of a table, each of a species of its own. */
const tableOf = <Line extends z.ZodType<{ readonly species: string }>>(line: Line) =>
  listUpTo(500, line).refine(
    (lines) => new Set(lines.map(({ species }) => species)).size === lines.length,
    "each species once",
  );

const rule = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("least-volume"), litres: size, of: volume }),
    z.strictObject({ kind: z.enum(["litres-each-centimetre", "litres-each-fish"]), classes, by, of: volume }),
    z.strictObject({
      kind: z.literal("body-lengths"),
      side: z.enum(["length", "width", "depth", "water depth"]),
      lengths: size.describe("How many body lengths of the largest fish."),
      by,
      species: listUpTo(500, speciesId).optional(),
    }),
    z.strictObject({
      kind: z.literal("large-fish-floor"),
      longerThan,
      taxa: families,
      forTwo: size.describe("m²."),
      eachMore: size.describe("m²."),
    }),
    z.strictObject({ kind: z.literal("front-edges"), table: tableOf(frontEdge) }),
    z.strictObject({ kind: z.literal("own-groups"), table: tableOf(ownGroup) }),
    z.strictObject({ kind: z.literal("shoalers") }),
    z.strictObject({ kind: z.literal("hardness-floor"), least: hardness.describe("°dH.") }),
    z.strictObject({ kind: z.literal("straight-walls") }),
    z.strictObject({ kind: z.literal("no-sphere") }),
    z.strictObject({ kind: z.literal("permit"), longerThan, taxa: families }),
    z.strictObject({
      kind: z.literal("untold"),
      because: z.enum(["not-given", "no-figure", "not-read"]),
      species: listUpTo(500, speciesId).optional(),
    }),
  ])
  .describe("What the requirement compares.");

const requirement = z.strictObject({
  id: slug.describe("Unique within the jurisdiction."),
  article: name,
  force: z.enum(["binding", "municipal", "advice", "guidance for authorities"]),
  basis: z.enum(["read", "memory"]).describe("Whether the figure was read or recalled."),
  covers: z.enum(["fish", "young fish", "animals"]).describe("Whom the text is about."),
  asks: sentence.describe("What it asks, in one sentence."),
  note: sentence.optional().describe("What the text excepts, and how it was read."),
  rule,
});

/** One file of `data/standards`. */
export const jurisdictionSchema = heldTo<Jurisdiction & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    id: slug.describe("The name of this file, without .json."),
    name: name.describe("Country, and city of municipal rules."),
    instruments: listUpTo(
      100,
      z.strictObject({
        title: note,
        date: name
          .regex(/^\d{4}(-\d{2}-\d{2})?$/, "a year or a day")
          .optional()
          .describe(
            "When the act was adopted or the report published, in the version that was read: of an act changed since, when that change was. Absent where the copy shows none.",
          ),
        caution: note.regex(
          / in (force|use) .*competent\.$/,
          "where the text in force is and who is competent",
        ),
        requirements: listUpTo(500, requirement),
      }),
    ),
  }),
);

/** Each requirement of a jurisdiction has an id of its own. */
export const idsAreUnique: Check = ({ instruments }) => {
  const ids = listed(instruments).flatMap((instrument, at) =>
    listed(fieldsOf(instrument).requirements).map((requirement, index) => ({
      path: ["instruments", at, "requirements", index, "id"],
      id: fieldsOf(requirement).id,
    })),
  );
  const first = new Map([...ids].reverse().map(({ id, path }) => [id, path]));
  return ids
    .filter(({ id, path }) => typeof id === "string" && first.get(id) !== path)
    .map(({ id, path }) => ({
      path,
      code: "conflict",
      found: id,
      expected: "an id that no other requirement has",
    }));
};

const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
