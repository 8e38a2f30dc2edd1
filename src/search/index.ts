/**
 * For apps that let their users choose: species by what somebody is typing, from an index of names alone, and the
 * profile of the one chosen, loaded by itself. Names of further languages are `vivary/search/<language>`.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export { loadSpecies } from "./load-species";
export type { NameKind, SearchNames } from "./names";
export { type Suggestion, type SuggestOptions, suggestSpecies } from "./suggest-species";
