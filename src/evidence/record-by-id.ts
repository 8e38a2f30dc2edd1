import type { SpeciesRecord } from "../species";
import { movedIds } from "../species/moved/generated";
import { allRecords } from "./generated";

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
  const current = Object.hasOwn(movedIds, id) ? movedIds[id] : id;
  return allRecords.find((record) => record.id === current);
}
