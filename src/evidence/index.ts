/**
 * The full records behind the profiles: every statement with its source, and the bibliography. One alone is
 * `vivary/evidence/<id>`.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export { dataVersion } from "../generated";
export { allRecords, recordById } from "./all-records";
export { bibtex } from "./bibliography/bibtex";
export { type Citation, citationsOf } from "./bibliography/citations";
export { sources } from "./bibliography/sources";
