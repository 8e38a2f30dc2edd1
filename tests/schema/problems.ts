import { pathText } from "../../src/errors";
import { type Problem, safeParseSpecies } from "../../src/schema";
import { leastRecord } from "../species/records";

/** A problem with its path as text. */
type Told = Omit<Problem, "path"> & { readonly path: string };

/** What is wrong with a record; nothing if it is accepted. */
export function problemsOf(input: unknown): readonly Told[] {
  const parsed = safeParseSpecies(input);
  return parsed.success
    ? []
    : parsed.problems.map((problem) => ({ ...problem, path: pathText(problem.path) }));
}

/** The problems of a record that is sound but for the given fields, each as `[path, expected]`. */
export function problemsWith(fields: Readonly<Record<string, unknown>>): readonly [string, string][] {
  return problemsOf({ ...leastRecord, ...fields }).map(({ path, expected }) => [path, expected]);
}
