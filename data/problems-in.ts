// What is wrong with a file of data by itself.
import { type Problem, safeParseSpecies } from "vivary/schema";
import type { Folder } from "./files";

export function problemsIn(folder: Folder, json: unknown): readonly Problem[] {
  if (folder !== "species") return [];
  const parsed = safeParseSpecies(json);
  return parsed.success ? [] : parsed.problems;
}
