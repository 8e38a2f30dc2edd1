/**
 * The full records behind the profiles: every statement with its source. One alone is `vivary/evidence/<id>`.
 *
 * @packageDocumentation
 */
export { allRecords, recordById } from "./all-records";
