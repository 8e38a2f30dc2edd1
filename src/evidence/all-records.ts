import { shelf } from "../shelf";
import type { SpeciesRecord } from "../species";
import { texts } from "./generated";

const records = shelf<SpeciesRecord>(texts);

/** The record of every species, by id. Each is parsed when it is first read, and cannot be changed. */
export const allRecords: readonly SpeciesRecord[] = records.all;

/**
 * The full record of a species, with every statement and its source, or undefined where there is none. An id
 * that has moved forwards to the accepted one.
 *
 * @param id - The accepted name in lower case, words joined by hyphens.
 *
 * @example
 * ```ts
 * import { recordById } from "vivary/evidence";
 *
 * recordById("puntigrus-tetrazona")?.size?.adultLength?.length; // => 4
 * recordById("constructor"); // => undefined
 * ```
 */
export function recordById(id: string): SpeciesRecord | undefined {
  return records.byId(id);
}
