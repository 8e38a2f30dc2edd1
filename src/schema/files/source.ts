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
  z.strictObject({
    family: name.describe("The family name of a person."),
    given: name.optional().describe("The given names or their initials."),
    suffix: name.optional().describe("What stands after the name, such as Jr."),
  }),
  z.strictObject({ literal: name.describe("The name of a body, such as an agency.") }),
]);

/** One file of `data/sources`. */
export const sourceSchema = heldTo<Source & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    id: slug.describe("The name of this file, without .json."),
    type: z.enum(sourceTypes).meta({
      description: "The sort of source, as CSL names it.",
      examples: ["article-journal", "book", "webpage"],
    }),
    title: note.meta({
      description: "The title, as it is printed.",
      examples: ["Thermal tolerance of thirteen popular ornamental fish species"],
    }),
    author: listUpTo(100, author)
      .optional()
      .meta({
        description: "Who wrote it, in the order printed.",
        examples: [[{ family: "Yanar", given: "M." }], [{ literal: "U.S. Geological Survey" }]],
      }),
    issued: z
      .strictObject({
        "date-parts": listUpTo(2, z.array(z.int().min(1)).min(1).max(3)).meta({
          description: "A list with one date: year, month, day. Two dates are a span.",
          examples: [[[2019]], [[2019, 4, 30]]],
        }),
      })
      .optional()
      .meta({
        description: "Year, month and day, as far as they are known.",
        examples: [{ "date-parts": [[2019, 4, 30]] }],
      }),
    "container-title": note
      .optional()
      .meta({ description: "The journal or the book that it stands in.", examples: ["Aquaculture"] }),
    "collection-title": note.optional().describe("The series."),
    "collection-number": key.optional().describe("The number within the series."),
    volume: key.optional().meta({ description: "The volume of the journal.", examples: ["501"] }),
    issue: key.optional().meta({ description: "The issue of the volume.", examples: ["2"] }),
    page: key.optional().meta({ description: "The first page and the last.", examples: ["382-386"] }),
    number: key.optional().describe("The number of a report, a standard or a law."),
    edition: key.optional().describe("The edition of a book, or the version of a data set."),
    genre: name.optional().describe("The sort of thesis or report, in words."),
    publisher: name.optional().describe("Who published it."),
    DOI: place
      .regex(/^10\.\d{4,9}\/\S+$/, "a DOI without https://doi.org/")
      .optional()
      .meta({ description: "Without https://doi.org/.", examples: ["10.1016/j.aquaculture.2018.11.041"] }),
    URL: place
      .regex(/^https?:\/\/\S+$/, "an address of the web")
      .optional()
      .meta({ description: "Where it is found on the web.", examples: ["https://nas.er.usgs.gov"] }),
    note: note.optional().describe("How it was read, what of the reference was recalled, and its terms."),
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
          .meta({
            description: "A keeper's signed observation: the author saw it, on the day it was issued.",
            examples: [{ animals: 12, days: 400 }],
          }),
      })
      .optional()
      .describe("What CSL has no field for."),
  }),
);
