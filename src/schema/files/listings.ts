import * as z from "zod";
import type { Listing } from "../../species";
import { listUpTo, name, note, place, schemaAddress, slug, speciesId } from "../bounded";
import { heldTo } from "../held-to";

/** A rule of law, and whom it names. */
export interface LegalListing extends Omit<Listing, "code" | "also"> {
  /** The species, genera and families that it names. */
  readonly taxa: readonly string[];
  /** Ids of the forms of these that it names alone; absent: it names every animal of them. */
  readonly forms?: readonly string[] | undefined;
  /** Ids of the species among them that it leaves out. */
  readonly except?: readonly string[] | undefined;
}

/** One file of `data/legal`: the rules of one lawgiver that name animals. */
export interface Listings {
  /** Where they apply, in words. */
  readonly jurisdiction: string;
  /** Ids of the lawgivers whose rules apply there as well. */
  readonly within?: readonly string[] | undefined;
  readonly listings: readonly LegalListing[];
}

const taxon = name.regex(/^[A-Z][a-z]+( [a-z-]+)*$/, "a scientific name, a genus or a family");

const listing = z.strictObject({
  jurisdiction: name.meta({
    description: "Where it applies, in words.",
    examples: ["Alabama (United States)"],
  }),
  instrument: note.meta({
    description: "Title and number of the instrument.",
    examples: ["Alabama Administrative Code 220-2-.26"],
  }),
  date: name.regex(/^(\d{4}(-\d{2}(-\d{2})?)?|undated)$/, "a day, a month, a year or undated").meta({
    description:
      "When the act was adopted or the report published, in the version that was read: of an act changed since, when that change was. Where another date stands for want of it, at says so.",
    examples: ["2019-07-10", "2019-07", "2019", "undated"],
  }),
  effect: note.meta({
    description: "What the instrument does, in one sentence.",
    examples: ["Keeping and selling are prohibited."],
  }),
  basis: z.enum(["published", "memory"]).describe("Whether the text was read or recalled."),
  at: place.optional().describe("Where the text was read."),
  taxa: listUpTo(500, taxon).meta({
    description: "The species, genera and families that it names.",
    examples: [["Misgurnus anguillicaudatus", "Pygocentrus", "Clariidae"]],
  }),
  forms: listUpTo(50, slug)
    .optional()
    .meta({
      description: "Ids of the forms of these that it names alone; absent: it names every animal of them.",
      examples: [["fluorescent"]],
    }),
  except: listUpTo(500, speciesId).optional().describe("Ids of the species that it leaves out."),
});

/** One file of `data/legal`. */
export const listingsSchema = heldTo<Listings & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    jurisdiction: name.describe("Where the rules apply, in words."),
    within: listUpTo(20, slug)
      .optional()
      .meta({
        description:
          "Names of the files of this folder, without .json, whose rules apply there as well. Those whose name begins this file's need not be named.",
        examples: [["eu", "cites"]],
      }),
    listings: listUpTo(500, listing).describe("The rules that restrict, one each."),
  }),
);
