export { speciesJsonSchema } from "./json-schema";
export { type Parsed, parseSpecies, safeParseSpecies } from "./parse";
export { describeProblem, type Problem, RecordError } from "./problem";
