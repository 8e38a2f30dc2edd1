export { allSpecies, speciesById } from "./all-species";
export { findSpecies } from "./find-species";
