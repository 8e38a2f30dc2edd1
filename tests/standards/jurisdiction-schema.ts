import * as z from "zod";

const text = z
  .string()
  .min(1)
  .regex(/^\S.*\S$/);
const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const positive = z.number().positive();
const volume = z.enum(["gross volume", "water volume", "water volume to gross volume"]);
const by = z.enum(["present standard length", "present total length", "adult total length"]);
const families = z.array(z.string().regex(/^[A-Z][a-z]+idae$/)).min(1);

/** Ascending lengths; only the last may be open. */
const classes = z
  .array(z.strictObject({ upTo: positive.optional(), litres: positive }))
  .min(1)
  .refine((all) => {
    const ends = all.map(({ upTo = Number.POSITIVE_INFINITY }) => upTo);
    return ends.every((end, index) => index === 0 || end > (ends[index - 1] ?? end));
  }, "ascending lengths")
  .refine(
    (all) => all.every(({ litres }, index) => litres >= (all[index - 1]?.litres ?? 0)),
    "ascending litres",
  );

const rule = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("least-volume"), litres: positive, of: volume }),
  z.strictObject({ kind: z.enum(["litres-each-centimetre", "litres-each-fish"]), classes, by, of: volume }),
  z.strictObject({
    kind: z.literal("body-lengths"),
    side: z.enum(["length", "width", "depth", "water depth"]),
    lengths: positive,
    by,
    species: z.array(id).min(1).optional(),
  }),
  z.strictObject({
    kind: z.literal("large-fish-floor"),
    longerThan: positive,
    taxa: families,
    forTwo: positive,
    eachMore: positive,
  }),
  z.strictObject({
    kind: z.literal("front-edge"),
    species: id,
    centimetres: positive,
    beyond: z.literal(true).optional(),
  }),
  z.strictObject({ kind: z.literal("own-group"), species: id, least: z.int().min(2).optional() }),
  z.strictObject({ kind: z.literal("shoalers") }),
  z.strictObject({
    kind: z.literal("hardness-floor"),
    least: z.strictObject({ min: positive, max: positive }).refine(({ min, max }) => min <= max),
  }),
  z.strictObject({ kind: z.literal("straight-walls") }),
  z.strictObject({ kind: z.literal("no-sphere") }),
  z.strictObject({ kind: z.literal("permit"), longerThan: positive, taxa: families }),
  z.strictObject({ kind: z.literal("untold"), because: z.enum(["not-given", "no-figure", "not-read"]) }),
]);

const requirement = z.strictObject({
  id,
  article: text,
  force: z.enum(["binding", "municipal", "advice", "guidance for authorities"]),
  basis: z.enum(["read", "memory"]),
  covers: z.enum(["fish", "animals"]),
  asks: text.regex(/\.$/),
  note: text.regex(/\.$/).optional(),
  rule,
});

/** What a file of `data/standards` must look like. */
export const jurisdictionSchema = z.strictObject({
  id,
  name: text,
  instruments: z
    .array(
      z.strictObject({
        title: text,
        date: z
          .string()
          .regex(/^\d{4}(-\d{2}-\d{2})?$/)
          .optional(),
        caution: text.regex(/ in (force|use) .*competent\.$/),
        requirements: z.array(requirement).min(1),
      }),
    )
    .min(1),
});
