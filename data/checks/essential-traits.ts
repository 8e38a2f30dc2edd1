import { essentialTraits as essential, factAt, splitPath, statementsOf, traitTable } from "vivary/species";
import { exampleAt } from "../reading/schema-at";
import type { Check } from "./check";

export const essentialTraits: Check = {
  name: "Every essential trait is stated",
  find: ({ records }) =>
    records.flatMap(({ path, record, profile }) =>
      essential
        .filter((trait) => !factAt(profile, trait))
        .map((trait) => ({
          file: path,
          at: splitPath(trait),
          found:
            statementsOf(record, trait).length > 0
              ? `${trait} is essential, and none of its lines counts`
              : `${trait} is essential and unknown`,
          example: exampleAt("species", [...splitPath(trait), 0]),
          mend: `${traitTable[trait].about} State it from a source, or as common practice where every keeper knows it.`,
        })),
    ),
};
