import * as z from "zod";
import type { Source, SourceType } from "../../species";
import { key, listUpTo, name, note, place, schemaAddress, slug } from "../bounded";
import { heldTo } from "../held-to";

const sourceTypes = [
  "article",
  "article-journal",
  "article-magazine",
  "article-newspaper",
  "book",
  "chapter",
  "dataset",
  "document",
  "entry",
  "interview",
  "legislation",
  "manuscript",
  "paper-conference",
  "personal_communication",
  "post",
  "post-weblog",
  "regulation",
  "report",
  "software",
  "standard",
  "thesis",
  "treaty",
  "webpage",
] as const satisfies readonly SourceType[];

const author = z.union([
  z.strictObject({ family: name, given: name.optional(), suffix: name.optional() }),
  z.strictObject({ literal: name }),
]);

/** One file of `data/sources`. */
export const sourceSchema = heldTo<Source & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    id: slug.describe("The name of this file, without .json."),
    type: z.enum(sourceTypes).describe("The sort of source, as CSL names it."),
    title: note,
    author: listUpTo(100, author).optional(),
    issued: z
      .strictObject({ "date-parts": listUpTo(2, z.array(z.int().min(1)).min(1).max(3)) })
      .optional()
      .describe("Year, month and day, as far as they are known."),
    "container-title": note.optional().describe("The journal or the book that it stands in."),
    "collection-title": note.optional().describe("The series."),
    "collection-number": key.optional(),
    volume: key.optional(),
    issue: key.optional(),
    page: key.optional(),
    number: key.optional(),
    edition: key.optional(),
    genre: name.optional().describe("The sort of thesis or report, in words."),
    publisher: name.optional(),
    DOI: place
      .regex(/^10\.\d{4,9}\/\S+$/, "a DOI without https://doi.org/")
      .optional()
      .describe("Without https://doi.org/."),
    URL: place.regex(/^https?:\/\/\S+$/, "an address of the web").optional(),
    note: note.optional(),
    custom: z
      .strictObject({
        commercial: z
          .boolean()
          .optional()
          .describe("Whether its licence leaves commercial use free; false where it forbids it."),
        observation: z
          .strictObject({
            animals: z.int().min(1).describe("How many animals were watched."),
            days: z.number().positive().describe("For how many days."),
          })
          .optional()
          .describe("A keeper's signed observation: the author saw it, on the day it was issued."),
      })
      .optional()
      .describe("What CSL has no field for."),
  }),
);
