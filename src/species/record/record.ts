import type { Kind } from "../traits/class-names";
import type { Statements } from "./statement";

/** A source as one record cites it. */
export interface SourceReference {
  /** The id of a file in `data/sources`. */
  readonly cite: string;
  /** Page, row or address within the source. */
  readonly at?: string | undefined;
  /** The value was recalled, the source not read. */
  readonly memory?: true | undefined;
  /** The source is a keeper's signed observation. */
  readonly observed?: true | undefined;
  /** The synonym under which the source records this species. */
  readonly under?: string | undefined;
  /** The other species, or the genus, that its figures are of: they stand in for this one. */
  readonly of?: string | undefined;
  /** The source this one copies from; sources with one root count once. Defaults to `cite`. */
  readonly root?: string | undefined;
  /**
   * `false` where the licence of the source, or of what it copies, forbids commercial use; `true` where none is known to.
   * Set in `vivary/evidence` from the files of `data/sources`; a record that does not say is taken to be forbidden.
   */
  readonly commercial?: boolean | undefined;
}

/** The sources of a record, by the key that its statements name. */
export type RecordSources = Readonly<Record<string, SourceReference>>;

/** What a species is called in science, and where it belongs. */
export interface Taxonomy {
  /** The accepted scientific name. */
  readonly name: string;
  /** Author and year, as the code of nomenclature writes them. */
  readonly authority: string;
  readonly family: string;
  readonly order: string;
  readonly kind: Kind;
  readonly synonyms?: readonly string[] | undefined;
  readonly note?: string | undefined;
}

/** Vernacular names by language (BCP 47), the commonest first. */
export type Names = Readonly<Record<string, readonly string[]>>;

/** Key in another database, by the database's name. Always strings. */
export type Identifiers = Readonly<Record<string, string>>;

/** A form bred in captivity: what differs from the species. */
export type FormRecord = {
  readonly names: Names;
  /** Ids it once bore. */
  readonly once?: readonly string[] | undefined;
} & Statements;

/** One file of `data/species`: what sources said. */
export type SpeciesRecord = {
  /** The accepted name in lower case, words joined by hyphens. */
  readonly id: string;
  readonly taxonomy: Taxonomy;
  readonly names: Names;
  readonly identifiers?: Identifiers | undefined;
  readonly sources: RecordSources;
  readonly forms?: Readonly<Record<string, FormRecord>> | undefined;
} & Statements;
