import type { CitableSource, SourceReference } from "../../species";

/** A source of a record with its reference, as `citationsOf` of `vivary/evidence` gives it. */
export interface PageSource extends SourceReference {
  /** The key by which statements of the record name it. */
  readonly by: string;
  /** Whether a value that counts comes from it. */
  readonly used: boolean;
  readonly source?: CitableSource | undefined;
}
