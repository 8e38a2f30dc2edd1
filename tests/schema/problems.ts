import { type Problem, safeParseSpecies } from "../../src/schema";
import { leastRecord } from "../species/records";

/** What is wrong with a record; nothing if it is accepted. */
export function problemsOf(input: unknown): readonly Problem[] {
  const parsed = safeParseSpecies(input);
  return parsed.success ? [] : parsed.problems;
}

/** The problems of a record that is sound but for the given fields, each as `[path, expected]`. */
export function problemsWith(fields: Readonly<Record<string, unknown>>): readonly [string, string][] {
  return problemsOf({ ...leastRecord, ...fields }).map(({ path, expected }) => [path, expected]);
}
