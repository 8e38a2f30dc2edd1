import type { Collection } from "../collection";

/** A check of all data as one. */
export interface Check {
  /** What holds where it finds nothing, as a sentence. */
  readonly name: string;
  readonly find: (collection: Collection) => readonly Slip[] | Promise<readonly Slip[]>;
}

/** Something a check found. */
export interface Slip {
  /** The file, with its line where that is known. */
  readonly where: string;
  readonly found: string;
  readonly expected?: string | undefined;
  /** How to mend it. */
  readonly mend: string;
}
