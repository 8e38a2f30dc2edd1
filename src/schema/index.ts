/**
 * The schema of what `data` holds: parsing of species records with every problem at once, and a JSON Schema for each
 * folder. The only part of the library that needs zod.
 *
 * @packageDocumentation
 */
export { describeProblem, InvalidInputError, type Problem, type ProblemCode } from "../errors";
export type { Observation, Source, SourceAuthor } from "../species";
export type { JsonSchema } from "./as-json";
export type { LegalListing, Listings } from "./files/listings";
export type { MovedId } from "./files/moved-id";
export { type DataFolder, jsonSchemas, problemsIn, speciesJsonSchema } from "./folders";
export { type ParsedSpecies, parseSpecies, safeParseSpecies } from "./species/parse";
