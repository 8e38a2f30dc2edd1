import { essentialTraits as essential, factAt, traitTable } from "vivary/species";
import type { Check } from "./check";

export const essentialTraits: Check = {
  name: "Every essential trait is stated",
  find: ({ records }) =>
    records.flatMap(({ path, profile }) =>
      essential
        .filter((trait) => !factAt(profile, trait))
        .map((trait) => ({
          where: path,
          found: `${trait} is essential and unknown`,
          expected: traitTable[trait].about,
          mend: "State it from a source, or as common practice where every keeper knows it.",
        })),
    ),
};
