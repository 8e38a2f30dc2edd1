export { findSpecies } from "./find-species";
export * from "./generated";
export { speciesById } from "./species-by-id";
