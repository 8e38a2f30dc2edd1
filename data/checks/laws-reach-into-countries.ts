import { fieldOf } from "../reading/fields";
import { nearest } from "../reading/spelling";
import type { Check } from "./check";

export const lawsReachIntoCountries: Check = {
  name: "A country is within lawgivers that are there",
  find({ files }) {
    const lawgivers = new Set(files.legal.map(({ name }) => name));
    return files.legal.flatMap(({ path: file, name: own, json }) => {
      const within = fieldOf(json, "within");
      return (Array.isArray(within) ? within : []).flatMap((wider, index) => {
        if (typeof wider !== "string" || (wider !== own && lawgivers.has(wider))) return [];
        const meant = nearest(wider, lawgivers, 2);
        return [
          {
            file,
            at: ["within", index],
            found: wider === own ? `${wider}, which is this file` : `${wider}, of which there is no file`,
            expected: "the name of a file in data/legal, without .json",
            ...(meant !== undefined && meant !== own && { guess: ` Did you mean ${meant}?` }),
            mend: "Correct it, or add the file of that lawgiver.",
          },
        ];
      });
    });
  },
};
