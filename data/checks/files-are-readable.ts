import { allFiles } from "../collection";
import { faultsOf } from "../json";
import type { Check } from "./check";

/** Syntax errors, and keys that stand twice: of those every reader but one is silently lost. */
export const filesAreReadable: Check = {
  name: "A file is JSON that everyone reads alike",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, text }) =>
      faultsOf(text).map(({ line, found }) => ({
        where: `${path}:${line}`,
        found,
        mend: "Correct the line: a comma too many or too few, a quote that is none, a key that is there already.",
      })),
    ),
};
