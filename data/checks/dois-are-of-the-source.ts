import type { Source } from "vivary/schema";
import type { Check } from "./check";

export const doisAreOfTheSource: Check = {
  name: "A DOI in at is that of the source",
  find: ({ records, files }) => {
    const held = new Map(files.sources.map(({ name, json }) => [name, (json ?? {}) as Partial<Source>]));
    return records.flatMap(({ path: file, record }) =>
      Object.entries(record.sources).flatMap(([key, { cite, at = "", root }]) => {
        const { DOI, type } = held.get(cite) ?? {};
        const named = doisIn(at);
        const isOfAnother = root !== undefined || type === "dataset";
        if (DOI === undefined || isOfAnother || named.length === 0) return [];
        if (named.some((doi) => doi.startsWith(DOI.toLowerCase()))) return [];
        return [
          {
            file,
            at: ["sources", key, "at"],
            besides: `data/sources/${cite}.json`,
            found: `the DOI ${named[0]}, and ${DOI} in data/sources/${cite}.json`,
            expected: "one DOI of one paper",
            mend: "Correct the one that leads nowhere; where the source copies the figure from that paper, name it in root.",
          },
        ];
      }),
    );
  },
};

/** The DOIs that a text names, in small letters, whatever stands behind them. */
const doisIn = (text: string): readonly string[] =>
  [...text.toLowerCase().matchAll(/10\.\d{4,9}\/[^\s"<>?#]+/g)].map(([doi]) => doi);
