import type { SpeciesRecord } from "../species";
import { allRecords } from "./generated";

/**
 * The full record of a species, with every statement and its source, or undefined where there is none.
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
  return allRecords.find((record) => record.id === id);
}
