export { describeProblem, InvalidInputError, type Problem, type ProblemCode } from "../errors";
export { type DataFolder, jsonSchemas, problemsIn, speciesJsonSchema } from "./folders";
export type { LegalListing, Listings } from "./listings";
export type { MovedId } from "./moved-id";
export { type ParsedSpecies, parseSpecies, safeParseSpecies } from "./parse-species";
export type { Source, SourceAuthor } from "./source";
