/** The sort of a source, as CSL names it. */
export type SourceType =
  | "article"
  | "article-journal"
  | "article-magazine"
  | "article-newspaper"
  | "book"
  | "chapter"
  | "dataset"
  | "document"
  | "entry"
  | "interview"
  | "legislation"
  | "manuscript"
  | "paper-conference"
  | "personal_communication"
  | "post"
  | "post-weblog"
  | "regulation"
  | "report"
  | "software"
  | "standard"
  | "thesis"
  | "treaty"
  | "webpage";

/** A person, by family and given name, or a body, by its literal name. */
export type SourceAuthor =
  | {
      readonly family: string;
      readonly given?: string | undefined;
      /** What stands after the name, such as `Jr.` */
      readonly suffix?: string | undefined;
    }
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
  readonly type: SourceType;
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
  /** How it was read, what of the reference was recalled, and its terms. */
  readonly note?: string | undefined;
  /** What CSL has no field for. */
  readonly custom?: SourceTerms | undefined;
}

/** Of a source, what CSL has no field for. */
export interface SourceTerms {
  /** Whether its licence leaves commercial use free; `false` where it forbids it. */
  readonly commercial?: boolean | undefined;
  readonly observation?: Observation | undefined;
}

/**
 * A source as a reader cites it, in CSL-JSON. Remarks on how it was read are no part of a bibliography: they stand in
 * `custom`, which programs that print references pass over.
 */
export interface CitableSource extends Omit<Source, "note" | "custom"> {
  readonly custom?:
    | (SourceTerms & {
        /** How it was read, what of the reference was recalled, and its terms. */
        readonly remark?: string | undefined;
      })
    | undefined;
}
