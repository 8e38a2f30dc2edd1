import type { Source } from "vivary/schema";
import type { Check } from "./check";

export const observationsAreSigned: Check = {
  name: "A keeper's observation says who saw it, when, on how many animals and for how long",
  find({ records, files }) {
    const held = new Map(files.sources.map(({ name, json }) => [name, (json ?? {}) as Partial<Source>]));
    const unsigned = files.sources.flatMap(({ name, path }) => {
      const { custom, author = [], issued } = held.get(name) ?? {};
      if (!custom?.observation) return [];
      const missing = [...(author.length > 0 ? [] : ["author"]), ...(issued === undefined ? ["issued"] : [])];
      return missing.map((field) => ({
        file: path,
        at: ["custom", "observation"],
        found: `an observation without ${field}`,
        expected: "the name of the keeper as author, and the day it was seen as issued",
        mend: `Add ${field}.`,
      }));
    });
    const misused = records.flatMap(({ path, record }) =>
      Object.entries(record.sources).flatMap(([key, { cite, observed = false }]) => {
        const isObservation = held.get(cite)?.custom?.observation !== undefined;
        if (observed === isObservation) return [];
        return [
          {
            file: path,
            at: ["sources", key],
            found: observed
              ? `the source ${key} is observed, and data/sources/${cite}.json is no observation`
              : `the source ${key} is an observation, and does not say so`,
            expected: "observed: true where, and only where, the file has custom.observation",
            mend: observed
              ? "Take observed away, or cite a file of your own: npm run species new observation <id>."
              : "Add observed: true to the source.",
          },
        ];
      }),
    );
    return [...unsigned, ...misused];
  },
};
