// Writes sources as BibTeX.
import { Cite, plugins } from "@citation-js/core";
import "@citation-js/plugin-bibtex";
import type { CitableSource } from "vivary/species";

// An entry is cited by the id of its source, hyphens and all; letters stay what they are, for not all have an escape.
Object.assign(plugins.config.get("@bibtex").format, {
  useIdAsLabel: true,
  checkLabel: false,
  asciiOnly: false,
});

/** The id of each source with its entry. */
export const bibtexOf = (
  sources: readonly CitableSource[],
): readonly (readonly [id: string, entry: string])[] =>
  sources.map(({ custom, ...item }) => [
    item.id,
    settable(annotated(new Cite(item).format("bibtex").trim(), custom?.remark)),
  ]);

/** An entry with a remark on it, in the field that bibliographies leave out. */
const annotated = (entry: string, remark: string | undefined) =>
  remark === undefined ? entry : entry.replace(/,?\n\}$/, `,\n\tannote = {${remark}},\n}`);

/** An entry that LaTeX can set: what it takes for commands is escaped, and no address stands twice. */
const settable = (entry: string) =>
  entry
    .split("\n")
    .filter((line) => !/^\thowpublished = \{https?:/.test(line))
    .map((line) => (/^\t(?!url |doi )/.test(line) ? line.replaceAll(/[&%$#_]/g, "\\$&") : line))
    .join("\n");
