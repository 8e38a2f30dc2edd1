import type { Problem } from "vivary/schema";
import { positionAt } from "../reading/json";
import { causesAmong } from "./causes-among";
import type { Check } from "./check";
import { slipOf } from "./wording";

/** What the schema and the checks within one file say, but of lines that are no JSON. */
export const wellFormed: Check = {
  name: "Every field must be as its schema asks",
  find: (collection) =>
    collection.problems.flatMap(({ file, problems }) => {
      const unread = new Set(file.faults.map(({ at }) => at.line));
      return causesAmong(problems)
        .filter(saysMost)
        .filter(({ path }) => unread.size === 0 || !unread.has(positionAt(file.text, path).line))
        .map((problem) => slipOf(file, problem));
    }),
};

/** Whether no later problem is of the same place, where nothing stands: that says what belongs there, not only its sort. */
function saysMost({ path, found }: Problem, index: number, problems: readonly Problem[]): boolean {
  const place = JSON.stringify(path);
  const isEmpty = found === undefined || found === "";
  return !isEmpty || problems.slice(index + 1).every((later) => JSON.stringify(later.path) !== place);
}
