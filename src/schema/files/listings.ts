import * as z from "zod";
import type { Listing } from "../../species";
import { listUpTo, name, note, place, schemaAddress, speciesId } from "../bounded";
import { heldTo } from "../held-to";

/** A rule of law, and whom it names. */
export interface LegalListing extends Omit<Listing, "code"> {
  /** The species, genera and families that it names. */
  readonly taxa: readonly string[];
  /** Ids of the species among them that it leaves out. */
  readonly except?: readonly string[] | undefined;
}

/** One file of `data/legal`: the rules of one lawgiver that name animals. */
export interface Listings {
  /** Where they apply, in words. */
  readonly jurisdiction: string;
  readonly listings: readonly LegalListing[];
}

const taxon = name.regex(/^[A-Z][a-z]+( [a-z-]+)*$/, "a scientific name, a genus or a family");

const listing = z.strictObject({
  jurisdiction: name.describe("Where it applies, in words."),
  instrument: note.describe("Title and number of the instrument."),
  date: name
    .regex(/^(\d{4}(-\d{2}(-\d{2})?)?|undated)$/, "a day, a month, a year or undated")
    .describe(
      "When the act was adopted or the report published, in the version that was read: of an act changed since, when that change was. Where another date stands for want of it, at says so.",
    ),
  effect: note.describe("What the instrument does, in one sentence."),
  basis: z.enum(["published", "memory"]).describe("Whether the text was read or recalled."),
  at: place.optional().describe("Where the text was read."),
  taxa: listUpTo(500, taxon).describe("The species, genera and families that it names."),
  except: listUpTo(500, speciesId).optional().describe("Ids of the species that it leaves out."),
});

/** One file of `data/legal`. */
export const listingsSchema = heldTo<Listings & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    jurisdiction: name.describe("Where the rules apply, in words."),
    listings: listUpTo(500, listing).describe("The rules that restrict, one each."),
  }),
);
