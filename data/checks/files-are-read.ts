import { strayFiles } from "../reading/stray-files";
import type { Check } from "./check";

export const filesAreRead: Check = {
  name: "A file of data lies where it is read",
  find: async ({ root }) =>
    (await strayFiles(root)).map((file) => ({
      file,
      found: "is read by nothing",
      expected:
        "a name that ends in .json, and a place in data/species, data/sources, data/moved, data/legal or data/standards itself",
      mend: "Move it there, give it the ending .json in small letters, or delete it.",
    })),
};
