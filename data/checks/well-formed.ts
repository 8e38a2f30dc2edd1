import { positionAt } from "../json";
import { slipOf } from "../wording";
import type { Check } from "./check";

/** What the schema and the checks within one file say, but of lines that are no JSON. */
export const wellFormed: Check = {
  name: "A file is well formed",
  find: (collection) =>
    collection.problems.flatMap(({ file, problems }) => {
      const unread = new Set(file.faults.map(({ at }) => at.line));
      return problems
        .filter(({ path }) => unread.size === 0 || !unread.has(positionAt(file.text, path).line))
        .map((problem) => slipOf(file, problem));
    }),
};
