import * as z from "zod";
import type { Jurisdiction } from "../../standards/inner";
import { listUpTo, name, note, schemaAddress, slug, speciesId } from "../bounded";
import type { Check } from "../checked";
import { fieldsOf } from "../fields";
import { heldTo } from "../held-to";

const sentence = note.regex(/^\S.*\.$/, "a sentence that ends with a full stop");
const size = z.number().positive();
const volume = z
  .enum(["gross volume", "water volume", "water volume to gross volume"])
  .describe("Which volume is meant; both where the text leaves it open.");
const by = z
  .enum(["present standard length", "present total length", "adult total length"])
  .describe("By which length of the fish.");
const families = listUpTo(500, name.regex(/^[A-Z][a-z]+idae$/, "the name of a family")).describe(
  "Families that count at any length.",
);
const longerThan = size.describe("Adult total length in cm.");

/** Ascending lengths; only the last may be open. */
const classes = listUpTo(
  100,
  z.strictObject({
    upTo: size.optional().describe("Up to this length of the fish in cm; every length if absent."),
    litres: size.describe("Litres for it."),
  }),
)
  .refine((all) => {
    const ends = all.map(({ upTo = Number.POSITIVE_INFINITY }) => upTo);
    return ends.every((end, index) => index === 0 || end > (ends[index - 1] ?? end));
  }, "ascending lengths")
  .refine(
    (all) => all.every(({ litres }, index) => litres >= (all[index - 1]?.litres ?? 0)),
    "ascending litres",
  )
  .describe("Classes of length, the shortest fish first.");

const hardness = z
  .strictObject({ min: size.describe("The lower figure of the text."), max: size.describe("The upper one.") })
  .refine(({ min, max }) => min <= max, "min not above max");

const line = {
  species: speciesId.describe("The id of the species."),
  at: name.describe("Where in the article the line stands."),
};
const frontEdge = z.strictObject({
  ...line,
  centimetres: size.describe("The least longest side."),
  beyond: z.boolean().optional().describe("The edge must be longer than that."),
});
const ownGroup = z.strictObject({
  ...line,
  least: z.int().min(2).optional().describe("Absent: not alone, and no number is stated."),
});

/** Lines of a table, each of a species of its own. */
const tableOf = <Line extends z.ZodType<{ readonly species: string }>>(line: Line) =>
  listUpTo(500, line)
    .refine(
      (lines) => new Set(lines.map(({ species }) => species)).size === lines.length,
      "each species once",
    )
    .describe("A line a species.");

const kind = <Kind extends string>(...kinds: readonly [Kind, ...Kind[]]) =>
  z.enum(kinds).describe("The kind of what it compares.");

const about = listUpTo(500, speciesId)
  .optional()
  .describe("Ids of the species it is about; whatever it covers if absent.");

const rule = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: kind("least-volume"), litres: size.describe("The least volume."), of: volume }),
    z.strictObject({ kind: kind("litres-each-centimetre", "litres-each-fish"), classes, by, of: volume }),
    z.strictObject({
      kind: kind("body-lengths"),
      side: z.enum(["length", "width", "depth", "water depth"]).describe("Which side of the tank."),
      lengths: size.describe("How many body lengths of the largest fish."),
      by,
      species: about,
    }),
    z.strictObject({
      kind: kind("large-fish-floor"),
      longerThan,
      taxa: families,
      forTwo: size.describe("m²."),
      eachMore: size.describe("m²."),
    }),
    z.strictObject({ kind: kind("front-edges"), table: tableOf(frontEdge) }),
    z.strictObject({ kind: kind("own-groups"), table: tableOf(ownGroup) }),
    z.strictObject({ kind: kind("shoalers") }),
    z.strictObject({ kind: kind("hardness-floor"), least: hardness.describe("°dH.") }),
    z.strictObject({ kind: kind("straight-walls") }),
    z.strictObject({ kind: kind("no-sphere") }),
    z.strictObject({ kind: kind("permit"), longerThan, taxa: families }),
    z.strictObject({
      kind: kind("untold"),
      because: z
        .enum(["not-given", "no-figure", "not-read"])
        .describe("The plan does not tell, the text states no figure, or its figures have not been read."),
      species: about,
    }),
  ])
  .describe("What the requirement compares.");

const requirement = z.strictObject({
  id: slug.describe("Unique within the jurisdiction."),
  article: name.describe("Article, section or table of the instrument."),
  force: z.enum(["binding", "municipal", "advice", "guidance for authorities"]).describe("How far it binds."),
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
        title: note.describe("Title and number."),
        date: name
          .regex(/^\d{4}(-\d{2}-\d{2})?$/, "a year or a day")
          .optional()
          .describe(
            "When the act was adopted or the report published, in the version that was read: of an act changed since, when that change was. Absent where the copy shows none.",
          ),
        caution: note
          .regex(/ in (force|use) .*competent\.$/, "where the text in force is and who is competent")
          .describe("Where the text in force is found, and which authority is competent."),
        requirements: listUpTo(500, requirement).describe("What it asks for, one each."),
      }),
    ).describe("Laws, regulations and official guides."),
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
