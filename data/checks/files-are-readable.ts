import { allFiles } from "../reading/collection";
import type { Check } from "./check";

/** Syntax errors, and keys that stand twice: of those every reader but one is silently lost. */
export const filesAreReadable: Check = {
  name: "A file is JSON that everyone reads alike",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, faults }) => faults.map((fault) => ({ file: path, ...fault }))),
};
