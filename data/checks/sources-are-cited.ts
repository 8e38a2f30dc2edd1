import { fieldOf, fieldsOf } from "../fields";
import type { Check } from "./check";

export const sourcesAreCited: Check = {
  name: "A cited source has a file, and a file is cited",
  find({ files }) {
    const known = new Set<unknown>(files.sources.map(({ name }) => name));
    const citing = new Map<unknown, string>();
    for (const { path, json } of files.species) {
      for (const [, source] of fieldsOf(fieldOf(json, "sources"))) citing.set(fieldOf(source, "cite"), path);
    }
    const lost = [...citing].filter(([cite]) => !known.has(cite));
    const spare = files.sources.filter(({ name }) => !citing.has(name));
    return [
      ...lost.map(([cite, path]) => ({
        where: `data/sources/${cite}.json`,
        found: `is cited by ${path} and missing`,
        expected: "a CSL-JSON file of that name",
        mend: "Add the source, or cite one that is there.",
      })),
      ...spare.map(({ path }) => ({
        where: path,
        found: "is cited by no record",
        expected: "a record that cites it",
        mend: "Cite it where it was used, or delete it.",
      })),
    ];
  },
};
