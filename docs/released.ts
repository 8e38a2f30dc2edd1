import { parseDocument } from "yaml";

/**
 * The text of a CITATION.cff, for the package and for its data, as of a release.
 *
 * @param day - The day of the release, as 2026-05-31.
 */
export function released(text: string, version: string, day: string): string {
  const citation = parseDocument(text);
  for (const path of [[], ["references", 0]]) {
    citation.setIn([...path, "version"], version);
    citation.setIn([...path, "date-released"], day);
  }
  return citation.toString({ lineWidth: 120 });
}
