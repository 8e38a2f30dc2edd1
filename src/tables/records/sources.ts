import { listOf, objectOf } from "../../checks";
import { frozen } from "../../frozen";
import type { RowWith } from "../table";
import { dct } from "../terms";
import { textOf } from "./described";

/** What a row takes of a source in CSL-JSON, the field names those of the standard. */
export interface CslSource {
  readonly id: string;
  readonly type: string;
  readonly title: string;
  readonly author?:
    | readonly (
        | { readonly family: string; readonly given?: string | undefined }
        | { readonly literal: string }
      )[]
    | undefined;
  readonly issued?: { readonly "date-parts": readonly (readonly number[])[] } | undefined;
  readonly "container-title"?: string | undefined;
  readonly volume?: string | undefined;
  readonly issue?: string | undefined;
  readonly page?: string | undefined;
  readonly publisher?: string | undefined;
  readonly DOI?: string | undefined;
  readonly URL?: string | undefined;
  readonly custom?:
    | { readonly commercial?: boolean | undefined; readonly remark?: string | undefined }
    | undefined;
}

const columns = {
  sourceID: {
    type: "string",
    about: "The id of the source.",
    required: true,
    term: dct("identifier"),
  },
  type: { type: "string", about: "The sort of source, as CSL names it.", required: true, term: dct("type") },
  title: { type: "string", about: "Its title.", required: true, term: dct("title") },
  authors: {
    type: "string",
    about: "Its authors, persons as family name, comma, given names, divided by semicolons.",
    term: dct("creator"),
  },
  year: { type: "integer", about: "The year of issue.", term: dct("issued") },
  container: { type: "string", about: "The journal or the book that it stands in.", term: dct("isPartOf") },
  volume: { type: "string", about: "The volume." },
  issue: { type: "string", about: "The issue." },
  pages: { type: "string", about: "The pages, or the number of the article." },
  publisher: { type: "string", about: "The publisher.", term: dct("publisher") },
  doi: { type: "string", about: "The DOI, without https://doi.org/." },
  url: { type: "string", about: "The address." },
  commercialUse: {
    type: "boolean",
    about:
      "Whether its licence leaves commercial use free: false where it forbids it, empty where it does not say.",
  },
  remark: {
    type: "string",
    about: "How it was read, and what of the reference was recalled: check that before you cite it.",
  },
} as const;

/** The sources. */
export const sources = /* @__PURE__ */ frozen({
  name: "sources",
  about: "A source that statements were read in.",
  columns,
  key: ["sourceID"],
  refers: {},
} as const);

/** A source as a row; `tables.sources` says what each cell holds. */
export type SourceRow = RowWith<typeof columns>;

/**
 * Sources in CSL-JSON as rows.
 *
 * @param given - The sources by id.
 * @throws InvalidInputError for what is no object of sources.
 *
 * @example
 * ```ts
 * import { sourceRows } from "vivary/tables";
 *
 * const author = [{ family: "Saxby", given: "A." }, { family: "Adams", given: "L." }];
 * const saxby = { id: "saxby-2010", type: "article-journal", title: "The effect of group size", author };
 * sourceRows({ "saxby-2010": saxby })[0]?.authors; // => "Saxby, A.; Adams, L."
 * ```
 */
export function sourceRows(given: Readonly<Record<string, CslSource | undefined>>): readonly SourceRow[] {
  return Object.entries(objectOf(given, "sources")).flatMap(([key, source]) =>
    source === undefined ? [] : [rowOf(checked(source, `sources.${key}`))],
  );
}

function checked(source: CslSource, at: string): CslSource {
  const { id, type, title, author = [] } = objectOf(source, at);
  for (const [field, text] of Object.entries({ id, type, title })) textOf(text, `${at}.${field}`);
  for (const [index, one] of listOf(author, `${at}.author`).entries())
    objectOf(one, `${at}.author[${index}]`);
  return source;
}

const rowOf = (source: CslSource): SourceRow => ({
  sourceID: source.id,
  type: source.type,
  title: source.title,
  authors: source.author?.map((author) => nameOf(author)).join("; ") || null,
  year: source.issued?.["date-parts"][0]?.[0] ?? null,
  container: source["container-title"] ?? null,
  volume: source.volume ?? null,
  issue: source.issue ?? null,
  pages: source.page ?? null,
  publisher: source.publisher ?? null,
  doi: source.DOI ?? null,
  url: source.URL ?? null,
  commercialUse: source.custom?.commercial ?? null,
  remark: source.custom?.remark ?? null,
});

function nameOf(author: NonNullable<CslSource["author"]>[number]): string {
  if ("literal" in author) return author.literal;
  return author.given === undefined ? author.family : `${author.family}, ${author.given}`;
}
