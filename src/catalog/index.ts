/**
 * Species to import: profiles of all, by id and by name. One species alone is `vivary/catalog/<id>`.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export { allSpecies, speciesById } from "./all-species";
export { findSpecies } from "./find-species";
