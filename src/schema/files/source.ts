import * as z from "zod";
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
] as const;

/** A person, by family and given name, or a body, by its literal name. */
export type SourceAuthor =
  | { readonly family: string; readonly given?: string | undefined }
  | { readonly literal: string };

/** A keeper's signed observation: the author saw it, on the day it was issued. */
export interface Observation {
  /** How many animals were watched. */
  readonly animals: number;
  /** For how many days. */
  readonly days: number;
}

/** One file of `data/sources`: a source in CSL-JSON, the field names those of the standard. */
export interface Source {
  /** The name of the file. */
  readonly id: string;
  /** The sort of source, as CSL names it. */
  readonly type: (typeof sourceTypes)[number];
  readonly title: string;
  readonly author?: readonly SourceAuthor[] | undefined;
  /** Year, month and day, as far as they are known. */
  readonly issued?: { readonly "date-parts": readonly (readonly number[])[] } | undefined;
  /** The journal or the book that it stands in. */
  readonly "container-title"?: string | undefined;
  /** The series. */
  readonly "collection-title"?: string | undefined;
  readonly "collection-number"?: string | undefined;
  readonly volume?: string | undefined;
  readonly issue?: string | undefined;
  readonly page?: string | undefined;
  readonly number?: string | undefined;
  readonly edition?: string | undefined;
  /** The sort of thesis or report, in words. */
  readonly genre?: string | undefined;
  readonly publisher?: string | undefined;
  /** Without `https://doi.org/`. */
  readonly DOI?: string | undefined;
  readonly URL?: string | undefined;
  readonly note?: string | undefined;
  /** What CSL has no field for. */
  readonly custom?:
    | {
        /** Whether its licence leaves commercial use free; `false` where it forbids it. */
        readonly commercial?: boolean | undefined;
        readonly observation?: Observation | undefined;
      }
    | undefined;
}

const author = z.union([
  z.strictObject({ family: name, given: name.optional() }),
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
