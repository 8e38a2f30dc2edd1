import { fieldOf } from "../reading/fields";
import type { DataFile } from "../reading/files";
import type { Check } from "./check";

/** The fields by which a source is known, each with how two spellings of one are told to be one. */
const marks = {
  DOI: (doi: string) => doi.toLowerCase(),
  URL: (address: string) =>
    address
      .toLowerCase()
      .replace(/^https?:\/\/(www\.)?/, "")
      .replace(/\/$/, ""),
} as const;

/** One paper under two names would count as two voices that agree. */
export const sourcesAreOne: Check = {
  name: "A paper is one source",
  find: ({ files: { sources } }) =>
    (["DOI", "URL"] as const).flatMap((field) => {
      const bearers = marked(sources, field);
      return bearers.flatMap(({ file: { path, name }, text, mark }) => {
        const others = bearers.filter((other) => other.mark === mark && other.file.name !== name);
        const [first] = others;
        if (first === undefined) return [];
        return [
          {
            file: path,
            at: [field],
            besides: first.file.path,
            found: `the ${field} ${text} stands in ${others.map(({ file }) => file.path).join(", ")} too`,
            expected: "one file for one paper",
            mend: `Cite ${first.file.name} and delete this file, or correct the ${field}; of two papers of which one copies from the other, each has its own ${field}, and the record says root.`,
          },
        ];
      });
    }),
};

const marked = (sources: readonly DataFile[], field: keyof typeof marks) =>
  sources.flatMap((file) => {
    const text = fieldOf(file.json, field);
    return typeof text === "string" && text !== "" ? [{ file, text, mark: marks[field](text) }] : [];
  });
