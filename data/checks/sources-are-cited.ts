import { fieldOf, fieldsOf } from "../reading/fields";
import { guess } from "../reading/spelling";
import type { Check } from "./check";

export const sourcesAreCited: Check = {
  name: "A cited source has a file, and a file is cited",
  find({ files }) {
    const known = new Set(files.sources.map(({ name }) => name));
    const cited = files.species.flatMap(({ path, json }) =>
      fieldsOf(fieldOf(json, "sources")).map(([key, source]) => ({
        file: path,
        at: ["sources", key, "cite"],
        cite: fieldOf(source, "cite"),
      })),
    );
    const lost = cited.filter(({ cite }) => typeof cite === "string" && cite !== "" && !known.has(cite));
    const used = new Set(cited.map(({ cite }) => cite));
    const spare = files.sources.filter(({ name }) => !used.has(name));
    return [
      ...lost.map(({ file, at, cite }) => ({
        file,
        at,
        found: `data/sources/${cite}.json is cited and missing`,
        expected: "a CSL-JSON file of that name",
        guess: meantBy(String(cite), known),
        mend: `Cite one that is there, or start it: npm run species new source ${cite}`,
      })),
      ...spare.map(({ path }) => ({
        file: path,
        found: "is cited by no record",
        expected: "a record that cites it",
        mend: "Cite it where it was used, or delete it.",
      })),
    ];
  },
};

/** The source that was meant, by another spelling or by the name of its file. */
function meantBy(cite: string, known: ReadonlySet<string>): string {
  const name = cite.replace(/\.json$/, "");
  return known.has(name) ? ` Did you mean ${name}?` : guess(name, known);
}
