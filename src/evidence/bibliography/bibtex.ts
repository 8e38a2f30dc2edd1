import { listOf } from "../../checks";
import { refusal } from "../../errors";
import { entries } from "./generated";

/**
 * Sources as BibTeX, for a bibliography: one entry each, in the order given, under the id of the source. How a source was
 * read, and what of its reference was recalled and has to be checked, stands in `annote`, which no common style prints.
 *
 * @param ids - Ids of {@link sources}, such as the `cite` of every citation of a record; each counts once.
 * @throws InvalidInputError for what is no list, and for an id of no source.
 *
 * @example
 * ```ts
 * import { bibtex } from "vivary/evidence";
 *
 * bibtex(["yanar-2019"]).startsWith("@article{yanar-2019,"); // => true
 * bibtex(["nobody-1900"]); // throws
 * ```
 */
export function bibtex(ids: readonly string[]): string {
  return [...new Set(listOf(ids, "ids"))].map((id, index) => `${entryOf(id, index)}\n`).join("\n");
}

function entryOf(id: string, index: number): string {
  const entry = entries.get(id);
  if (entry === undefined) throw refusal(`ids[${index}]`, "the id of a source", id, "word");
  return entry;
}
