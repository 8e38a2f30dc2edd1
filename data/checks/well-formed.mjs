import { describeProblem, safeParseSpecies } from "../collection.mjs";

export const name = "A record is well formed";

/** What the schema and the checks within one record say; each problem names what was found and what is expected. */
export function find({ files }) {
  return files.flatMap(({ path, json }) => {
    const parsed = safeParseSpecies(json);
    return parsed.success
      ? []
      : parsed.problems.map((problem) => ({
          where: path,
          found: describeProblem(problem),
          mend: "Correct the line; an editor that reads the JSON Schema underlines it.",
        }));
  });
}
