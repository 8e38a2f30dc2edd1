import type { Collection } from "../reading/collection";
import type { Position } from "../reading/json";

/** A check of all data as one. */
export interface Check {
  /** What holds where it finds nothing, as a sentence. */
  readonly name: string;
  readonly find: (collection: Collection) => readonly Slip[] | Promise<readonly Slip[]>;
}

/** Something a check found. */
export interface Slip {
  /** The file: `data/species/danio-rerio.json`. */
  readonly file: string;
  /** Where in it: the path of a field, or a line and column; the whole of it where absent. */
  readonly at?: readonly (string | number)[] | Position;
  /** Another file that it is about, and where it may as well be mended. */
  readonly besides?: string;
  readonly found: string;
  readonly expected?: string | undefined;
  /** What may have been meant, as a question with a space before it. */
  readonly guess?: string;
  /** What may stand there instead. */
  readonly example?: string | undefined;
  /** How to mend it. */
  readonly mend: string;
}
