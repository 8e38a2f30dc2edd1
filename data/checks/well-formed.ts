import { describeProblem, problemsIn } from "vivary/schema";
import { allFiles } from "../collection";
import { lineAt } from "../json";
import type { Check } from "./check";

/** What the schema and the checks within one file say; each problem names what was found and what is expected. */
export const wellFormed: Check = {
  name: "A file is well formed",
  find: (collection) =>
    allFiles(collection)
      .filter(({ json }) => json !== undefined)
      .flatMap(({ folder, path, text, json }) =>
        problemsIn(folder, json).map((problem) => ({
          where: `${path}:${lineAt(text, problem.path)}`,
          found: describeProblem(problem),
          mend: "Correct the line.",
        })),
      ),
};
