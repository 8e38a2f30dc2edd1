export { describeProblem, InvalidInputError, type Problem, type ProblemCode } from "../errors";
export type { LegalListing, Listings } from "./files/listings";
export type { MovedId } from "./files/moved-id";
export type { Source, SourceAuthor } from "./files/source";
export { type DataFolder, jsonSchemas, problemsIn, speciesJsonSchema } from "./folders";
export { type ParsedSpecies, parseSpecies, safeParseSpecies } from "./species/parse";
