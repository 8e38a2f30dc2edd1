import * as z from "zod";
import { note, schemaAddress, speciesId } from "../bounded";
import type { Check } from "../checked";
import { heldTo } from "../held-to";

/** One file of `data/moved`: an id that no species bears any more, or that the trade uses. */
export interface MovedId {
  readonly id: string;
  /** The id of a species. */
  readonly to: string;
  /** Why it forwards, in a sentence. */
  readonly why: string;
}

/** One file of `data/moved`. */
export const movedIdSchema = heldTo<MovedId & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    id: speciesId.describe("The id that forwards, and the name of this file without .json."),
    to: speciesId.describe("The id of a record in data/species."),
    why: note.describe("Why it forwards, in a sentence."),
  }),
);

/** An id forwards to another. */
export const goesElsewhere: Check = ({ id, to }) =>
  id !== undefined && id === to
    ? [{ path: ["to"], code: "conflict", found: to, expected: `another id than ${id}` }]
    : [];
